#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "practice/type_name.hpp"
#include "tasks/generate/draw.hpp"

// What types of made-up problems are made with; private to the room.
namespace fw::tasks {

/// What is fixed of a problem before its numbers are drawn, so that parallel versions share it.
struct Blueprint {
  Subject subject;
  int level = 1;
  std::size_t story = 0;  ///< which of the type's sentences
  std::size_t pick = 0;   ///< which of the thing's materials, and of what else there are several
  std::size_t trap = 0;   ///< which wrong turn the problem offers, where its type has several
  std::size_t turn = 0;   ///< how many of this type were made before: what is to be balanced goes by it

  [[nodiscard]] const Thing& thing() const { return *subject.thing; }
  [[nodiscard]] const Form& form() const { return *subject.form; }
  [[nodiscard]] const Family& family() const { return *subject.family; }
  [[nodiscard]] const std::string& unit() const { return subject.form->unit; }
  [[nodiscard]] solids::Description draw(Seed& seed, Labels labels) const {
    return subject.family->draw(seed, level, labels, *subject.form);
  }
};

/// A type of made-up problems.
struct MadeUp {
  int number = 0;     ///< its place among all of them: a new one takes the next, so that old seeds give the same
  std::string key;    ///< "surface", as the command line names it
  std::string title;  ///< "surface area"
  practice::Heading heading = practice::Heading::NameAndCount;
  int level = 1;       ///< from which on it is used
  std::string method;  ///< how it is solved: neighbors in a set differ in it
  bool (*serves)(const Subject& subject) = any;
  /// Nothing where the numbers drawn make no good problem. Its id is left empty.
  std::optional<lessons::Problem> (*make)(const Blueprint& blueprint, Seed& seed) = nullptr;
  bool of_circles = false;  ///< about things on a circle, and about these alone
};

/// The problem that this description and these known quantities make, with nothing asked yet; nothing where they make
/// no solid, or one whose labels fit only by rounding.
[[nodiscard]] std::optional<lessons::Problem> made_problem(const solids::Description& description,
                                                           const std::string& prompt, const solids::Known& known = {});
/// The same with one thing asked.
[[nodiscard]] std::optional<lessons::Problem> made_problem(const solids::Description& description,
                                                           const std::string& prompt, lessons::Task task,
                                                           const solids::Known& known = {});

/// Ways to tell a problem. A word in braces is a place: {who} and {Who} make {a thing}, {A thing}, {thing}; it stands
/// on {the base} or {one base}, has {bases} or a {base}; other places are given.
using Stories = std::vector<std::string>;
using Places = std::map<std::string, std::string>;
/// The blueprint's one, with its places filled in. Requires: each place is known.
[[nodiscard]] std::string told(const Stories& stories, const Blueprint& blueprint, const Places& more = {});

/// Stories by the way in which a material comes onto a thing, which stands in the place {stuff}.
struct WayStories {
  Stories wrap, paint, build;
  [[nodiscard]] const Stories& of(Way way) const { return way == Way::Wrap ? wrap : way == Way::Paint ? paint : build; }
};
/// By one of these materials. Requires: there is one.
[[nodiscard]] std::string told(const WayStories& stories, const std::vector<std::string>& materials,
                               const Blueprint& blueprint, Places more = {});
/// The one that the blueprint picks.
[[nodiscard]] const Material& picked(const std::vector<std::string>& materials, const Blueprint& blueprint);
/// Stories by whether a thing is filled, is solid, or is just hollow.
struct SpaceStories {
  Stories filled, solid, hollow;
};
[[nodiscard]] std::string told(const SpaceStories& stories, const Blueprint& blueprint, Places more = {});

[[nodiscard]] std::string plural_of(const std::string& noun);     ///< "gift boxes"
[[nodiscard]] std::string with_article(const std::string& noun);  ///< "an A-frame sign"
[[nodiscard]] std::string at_the_start(const std::string& text);  ///< of a sentence: "The art club"

/// The stories take turns, so that they are balanced.
[[nodiscard]] Blueprint by_turn(Blueprint blueprint);
/// Which labels a drawn solid carries: at the highest level one that is not needed.
[[nodiscard]] Labels labels_at(const Blueprint& blueprint, Labels usual);
/// "12 cm²" as it is said.
[[nodiscard]] std::string said_quantity(const units::WrittenQuantity& quantity);

/// A problem about the surface area or the volume, by its story's number.
struct Plain {
  std::string find;
  Labels labels;
  [[nodiscard]] bool is_volume() const { return find == "volume"; }
};
[[nodiscard]] Plain plain_of(const Blueprint& blueprint);
/// With nothing asked and nothing told yet.
[[nodiscard]] std::optional<lessons::Problem> plain_problem(const Blueprint& blueprint, Seed& seed);

}  // namespace fw::tasks
