// A value that most lack: two pointers where it is lacking; copies share it, and nothing can change
// it.
#pragma once

#include <memory>
#include <optional>
#include <utility>

namespace session {

template <class T>
class Seldom {
public:
  Seldom() = default;
  Seldom(T value) : value_(std::make_shared<const T>(std::move(value))) {}
  Seldom(const std::optional<T>& value)
      : value_(value ? std::make_shared<const T>(*value) : nullptr) {}
  explicit operator bool() const { return value_ != nullptr; }
  operator std::optional<T>() const { return value_ ? std::optional(*value_) : std::nullopt; }
  const T& operator*() const { return *value_; }
  const T* operator->() const { return value_.get(); }
  void reset() { value_.reset(); }
  bool operator==(const Seldom& other) const {
    return value_ && other.value_ ? *value_ == *other.value_ : value_ == other.value_;
  }

private:
  std::shared_ptr<const T> value_;
};

}
