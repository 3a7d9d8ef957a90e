#pragma once

#include <optional>
#include <string>
#include <vector>

#include "practice/seed.hpp"
#include "solids/catalog.hpp"

// Solids with nice numbers, to make problems of; private to the room.
namespace fw::tasks {

using practice::Seed;

/// Which labels a drawn solid carries.
enum class Labels {
  ForArea,    ///< slant heights
  ForVolume,  ///< heights
  All,        ///< both: one of them is not needed
};

/// A family of solids that problems are made of.
struct Family {
  int level = 1;    ///< from which on it is used
  solids::Use use;  ///< its kind is the one that serves this
  /// Gives a description of the kind its measures.
  void (*measure)(solids::Description& description, Seed& seed, int level, Labels labels, const std::string& unit);
  std::vector<std::string> things;        ///< of the fair that look so: "candle box"
  std::string from_volume, from_surface;  ///< the length that can be asked for when that is known
  bool has_lid = false;                   ///< its top can be left open
  bool has_spare_labels = false;          ///< with all labels, some follow from the others

  [[nodiscard]] solids::Description draw(Seed& seed, int level, Labels labels, const std::string& unit) const;
  [[nodiscard]] const solids::Traits& traits() const { return solids::kind_for(use).traits; }
};
[[nodiscard]] const std::vector<Family>& families();

// Which families serve a type of problem.
[[nodiscard]] inline bool any(const Family&) { return true; }
[[nodiscard]] inline bool is_box(const Family& family) { return family.traits().box_edges.has_value(); }
[[nodiscard]] inline bool has_bases(const Family& family) { return family.traits().has_base; }

/// A whole number from least to most.
[[nodiscard]] int drawn(Seed& seed, int least, int most);
template <class T>
[[nodiscard]] const T& one_of(const std::vector<T>& all, Seed& seed) {
  return all[seed.below(all.size())];
}

[[nodiscard]] solids::LengthEntry entry(const std::string& number, const std::string& unit);
/// The description with the length of this key ("height", "base.side") unknown.
[[nodiscard]] solids::Description without(solids::Description description, const std::string& key);

}  // namespace fw::tasks
