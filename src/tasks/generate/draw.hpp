#pragma once

#include <optional>
#include <string>
#include <vector>

#include "practice/seed.hpp"
#include "solids/catalog.hpp"
#include "tasks/things/thing.hpp"

// Solids with nice numbers, to make problems of; private to the room.
namespace fw::tasks {

using practice::Seed;

/// Which labels a drawn solid carries.
enum class Labels {
  ForArea,    ///< slant heights
  ForVolume,  ///< heights
  All,        ///< both: one of them is not needed
};

/// A family of solids that problems are made of: how a shape of things is described as a solid.
struct Family {
  Shape shape;
  int level = 1;          ///< from which on it is used
  solids::Use use;        ///< its kind is the one that serves this
  std::size_t faces = 0;  ///< how many
  /// Gives a description of the kind its measures, within the form's ranges.
  void (*measure)(solids::Description& description, Seed& seed, int level, Labels labels, const Form& form);
  /// In how many sizes a form comes, at most.
  std::size_t (*sizes)(const Form& form);
  std::string from_volume, from_surface;  ///< the length that can be asked for when that is known
  bool has_spare_labels = false;          ///< with all labels, some follow from the others

  [[nodiscard]] solids::Description draw(Seed& seed, int level, Labels labels, const Form& form) const;
  [[nodiscard]] const solids::Traits& traits() const { return solids::kind_for(use).traits; }
};
[[nodiscard]] const std::vector<Family>& families();
[[nodiscard]] const Family& family_of(Shape shape);

/// A thing in one of its forms.
struct Subject {
  const Thing* thing = nullptr;
  const Form* form = nullptr;
  const Family* family = nullptr;
};
/// All of them, in the order of the things.
[[nodiscard]] const std::vector<Subject>& subjects();

// Which things serve a type of problem.
[[nodiscard]] inline bool any(const Subject&) { return true; }
[[nodiscard]] inline bool is_box(const Subject& subject) { return subject.family->traits().box_edges.has_value(); }
[[nodiscard]] inline bool has_bases(const Subject& subject) { return subject.family->traits().has_base; }
[[nodiscard]] inline bool is_covered(const Subject& subject) { return !subject.thing->covers.empty(); }
[[nodiscard]] inline bool has_volume_story(const Subject& subject) {
  return !subject.thing->filling.empty() || !subject.thing->solid_of.empty();
}

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
