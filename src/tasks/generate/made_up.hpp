#pragma once

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
  const Family* family = nullptr;
  int level = 1;
  std::string unit = "cm";
  std::size_t story = 0;  ///< which of the type's sentences
  std::size_t thing = 0;  ///< which of the family's things
  std::size_t trap = 0;   ///< which wrong turn the problem offers, where its type has several
  std::size_t turn = 0;   ///< how many of this type were made before: what is to be balanced goes by it
};

/// A type of made-up problems.
struct MadeUp {
  int number = 0;     ///< its place among all of them: a new one takes the next, so that old seeds give the same
  std::string key;    ///< "surface", as the command line names it
  std::string title;  ///< "surface area"
  practice::Heading heading = practice::Heading::NameAndCount;
  int level = 1;       ///< from which on it is used
  std::string method;  ///< how it is solved: neighbors in a set differ in it
  bool (*serves)(const Family& family) = any;
  /// Nothing where the numbers drawn make no good problem. Its id is left empty.
  std::optional<lessons::Problem> (*make)(const Blueprint& blueprint, Seed& seed) = nullptr;
};

/// The problem that this description and these known quantities make, with nothing asked yet; nothing where they make
/// no solid, or one whose labels fit only by rounding.
[[nodiscard]] std::optional<lessons::Problem> made_problem(const solids::Description& description,
                                                           const std::string& prompt, const solids::Known& known = {});
/// The same with one thing asked.
[[nodiscard]] std::optional<lessons::Problem> made_problem(const solids::Description& description,
                                                           const std::string& prompt, lessons::Task task,
                                                           const solids::Known& known = {});

/// A sentence with "{A thing}" and "{a thing}" filled in.
[[nodiscard]] std::string told(const std::vector<std::string>& stories, const Blueprint& blueprint);
/// The stories take turns, so that they are balanced.
[[nodiscard]] Blueprint by_turn(Blueprint blueprint);
/// Which labels a drawn solid carries: at the highest level one that is not needed.
[[nodiscard]] Labels labels_at(const Blueprint& blueprint, Labels usual);
void fill_in(std::string& text, const std::string& place, const std::string& with);

/// A problem about the surface area or the volume, by its story's number.
struct Plain {
  std::string find;
  Labels labels;
};
[[nodiscard]] Plain plain_of(const Blueprint& blueprint);
/// With nothing asked yet.
[[nodiscard]] std::optional<lessons::Problem> plain_problem(const Blueprint& blueprint, Seed& seed,
                                                            const std::vector<std::string>& stories);

}  // namespace fw::tasks
