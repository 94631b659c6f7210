// A value that is large where most are small: copies share it, and nothing can change it.
#pragma once

#include <memory>
#include <utility>

namespace session {

template <class T>
class Immutable {
public:
  Immutable(T value = {}) : value_(std::make_shared<const T>(std::move(value))) {}
  const T& operator*() const { return *value_; }
  const T* operator->() const { return value_.get(); }
  std::shared_ptr<const T> shared() const { return value_; }
  bool operator==(const Immutable& other) const { return *value_ == *other.value_; }

private:
  std::shared_ptr<const T> value_;
};

}
