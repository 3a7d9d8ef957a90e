#pragma once

#include <type_traits>
#include <utility>
#include <variant>

#include "base/ensure.hpp"

namespace fw {

/// What went wrong, on its way into a Result: `return failure(error);`.
template <class E>
struct Failure {
  E error;
};
template <class E>
[[nodiscard]] Failure<std::decay_t<E>> failure(E&& error) {
  return {std::forward<E>(error)};
}

/// A value or the reason why there is none. Member names are std::expected's, to be replaced by it one day.
template <class T, class E>
class [[nodiscard]] Result {
 public:
  Result(T value) : content_(std::in_place_index<0>, std::move(value)) {}
  template <class F>
  requires(std::is_convertible_v<F, E>) Result(Failure<F> reason)
      : content_(std::in_place_index<1>, std::move(reason.error)) {}

  [[nodiscard]] bool has_value() const { return content_.index() == 0; }
  explicit operator bool() const { return has_value(); }

  [[nodiscard]] const T& value() const& {
    ensure(has_value(), "a result was read that holds an error");
    return std::get<0>(content_);
  }
  [[nodiscard]] T&& value() && {
    ensure(has_value(), "a result was read that holds an error");
    return std::get<0>(std::move(content_));
  }
  [[nodiscard]] const E& error() const& {
    ensure(!has_value(), "an error was read of a result that holds a value");
    return std::get<1>(content_);
  }
  [[nodiscard]] const T& operator*() const& { return value(); }
  [[nodiscard]] const T* operator->() const { return &value(); }
  [[nodiscard]] T value_or(T other) const { return has_value() ? value() : std::move(other); }

 private:
  std::variant<T, E> content_;
};

}  // namespace fw
