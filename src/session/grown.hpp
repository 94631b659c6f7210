// A list that only grows at its end, mostly. Copies share what they have alike, piece by piece, so
// that to copy a long one costs little more than to copy a short one.
#pragma once

#include <algorithm>
#include <compare>
#include <cstddef>
#include <iterator>
#include <memory>
#include <stdexcept>
#include <utility>
#include <vector>

namespace session {

template <class T>
class Grown {
public:
  class Iterator {
  public:
    using iterator_category = std::random_access_iterator_tag;
    using value_type = T;
    using difference_type = std::ptrdiff_t;
    using pointer = const T*;
    using reference = const T&;

    Iterator() = default;
    Iterator(const Grown* list, std::size_t at) : list_(list), at_(at) {}
    reference operator*() const { return (*list_)[at_]; }
    pointer operator->() const { return &(*list_)[at_]; }
    reference operator[](difference_type n) const { return *(*this + n); }
    Iterator& operator+=(difference_type n) {
      at_ += static_cast<std::size_t>(n);
      return *this;
    }
    Iterator& operator-=(difference_type n) { return *this += -n; }
    Iterator& operator++() { return *this += 1; }
    Iterator& operator--() { return *this += -1; }
    Iterator operator++(int) { return std::exchange(*this, *this + 1); }
    Iterator operator--(int) { return std::exchange(*this, *this - 1); }
    friend Iterator operator+(Iterator p, difference_type n) { return p += n; }
    friend Iterator operator+(difference_type n, Iterator p) { return p += n; }
    friend Iterator operator-(Iterator p, difference_type n) { return p -= n; }
    friend difference_type operator-(Iterator a, Iterator b) {
      return static_cast<difference_type>(a.at_) - static_cast<difference_type>(b.at_);
    }
    bool operator==(const Iterator& other) const { return at_ == other.at_; }
    auto operator<=>(const Iterator& other) const { return at_ <=> other.at_; }

  private:
    const Grown* list_ = nullptr;
    std::size_t at_ = 0;
  };
  using value_type = T;
  using const_iterator = Iterator;
  using iterator = Iterator;
  using const_reverse_iterator = std::reverse_iterator<Iterator>;

  std::size_t size() const { return size_; }
  bool empty() const { return size_ == 0; }
  const T& operator[](std::size_t i) const { return (*pieces_[i / piece])[i % piece]; }
  const T& at(std::size_t i) const {
    if (i >= size_) throw std::out_of_range("Grown::at");
    return (*this)[i];
  }
  const T& front() const { return (*this)[0]; }
  const T& back() const { return (*this)[size_ - 1]; }
  Iterator begin() const { return {this, 0}; }
  Iterator end() const { return {this, size_}; }
  const_reverse_iterator rbegin() const { return const_reverse_iterator(end()); }
  const_reverse_iterator rend() const { return const_reverse_iterator(begin()); }

  void push_back(T value) {
    if (size_ % piece == 0) {
      pieces_.push_back(std::make_shared<Piece>());
      pieces_.back()->reserve(piece);
    }
    own(pieces_.size() - 1).push_back(std::move(value));
    ++size_;
  }
  // For who alters one of them: no other copy sees it.
  T& change(std::size_t i) { return own(i / piece)[i % piece]; }

  // The first `count` become those of another list.
  void take_first(const Grown& from, std::size_t count) {
    std::copy_n(from.pieces_.begin(), count / piece, pieces_.begin());
    for (std::size_t i = count - count % piece; i < count; ++i) change(i) = from[i];
  }

  // A whole one for who wants to alter it throughout.
  operator std::vector<T>() const { return {begin(), end()}; }

  bool operator==(const Grown& other) const {
    return size_ == other.size_ && std::equal(begin(), end(), other.begin());
  }

private:
  using Piece = std::vector<T>;
  static constexpr std::size_t piece = sizeof(T) > 64 ? 32 : 512;

  Piece& own(std::size_t i) {
    std::shared_ptr<Piece>& p = pieces_[i];
    if (p.use_count() > 1) {
      auto alone = std::make_shared<Piece>();
      alone->reserve(piece);
      alone->assign(p->begin(), p->end());
      p = std::move(alone);
    }
    return *p;
  }

  std::vector<std::shared_ptr<Piece>> pieces_; // all are full but the last
  std::size_t size_ = 0;
};

}
