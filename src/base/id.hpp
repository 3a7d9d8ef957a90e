#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <initializer_list>
#include <utility>
#include <vector>

namespace fw {

/// A dense index that cannot be mixed up with another kind's: Id<struct FaceTag> is not Id<struct EdgeTag>.
/// There is no invalid value; absence is std::optional<Id<Tag>>.
template <class Tag>
struct Id {
  std::uint32_t value = 0;
  friend constexpr auto operator<=>(const Id&, const Id&) = default;
  [[nodiscard]] constexpr std::size_t index() const { return value; }
  [[nodiscard]] static constexpr Id at(std::size_t index) { return Id{static_cast<std::uint32_t>(index)}; }
};

/// A vector that takes only its own id as index.
template <class IdType, class T>
class IdVector {
 public:
  IdVector() = default;
  explicit IdVector(std::size_t size, const T& value = T{}) : items_(size, value) {}
  explicit IdVector(std::vector<T> items) : items_(std::move(items)) {}

  [[nodiscard]] T& operator[](IdType id) { return items_[id.index()]; }
  [[nodiscard]] const T& operator[](IdType id) const { return items_[id.index()]; }
  [[nodiscard]] std::size_t size() const { return items_.size(); }
  [[nodiscard]] bool empty() const { return items_.empty(); }
  void push_back(T item) { items_.push_back(std::move(item)); }
  [[nodiscard]] auto begin() { return items_.begin(); }
  [[nodiscard]] auto end() { return items_.end(); }
  [[nodiscard]] auto begin() const { return items_.begin(); }
  [[nodiscard]] auto end() const { return items_.end(); }
  friend bool operator==(const IdVector&, const IdVector&) = default;

 private:
  std::vector<T> items_;
};

}  // namespace fw

template <class Tag>
struct std::hash<fw::Id<Tag>> {
  std::size_t operator()(const fw::Id<Tag>& id) const noexcept { return id.value; }
};
