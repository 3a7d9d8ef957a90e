#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "practice/packing.hpp"
#include "reasoning/supply.hpp"
#include "words/message.hpp"

namespace fw::practice {

using geometry::FaceId;

/// The number that a question asks for, as far as mistakes differ by it.
enum class Asked {
  None,   ///< none that mistakes are known to lead to
  Parts,  ///< how many there are of `Question::item`, to be seen on the solid; no mistakes are known of it alone
  Surface,
  Lateral,
  BaseArea,
  Volume,
  Length,
  Count,         ///< of packs
  Packed,        ///< of items that are packed into the solid
  CopyArea,      ///< of a copy
  CopyVolume,    ///< the same
  Scale,         ///< how many times as long the edges of a copy are
  Faces,         ///< how many there are
  Edges,         ///< the same
  Vertices,      ///< the same
  LeastSurface,  ///< of all boxes with whole edges that hold as much
};

/// Whether faces, edges, vertices or other parts are counted.
[[nodiscard]] bool counts_parts(Asked asked);
/// "face", "edge" or "vertex". Requires: one of them is counted.
[[nodiscard]] std::string part_counted(Asked asked);

/// One thing that a problem asks for, with its answer.
struct Question {
  std::string find;  ///< key of its task: "surface_area", "height", "name", "count", "claim", "net"
  Asked asked = Asked::None;
  std::optional<exact::Number> truth = std::nullopt;  ///< none: the answer is a name, or a choice
  std::optional<units::Unit> unit = std::nullopt;     ///< none: a plain count, or a name
  bool is_converted = false;                          ///< `unit` is asked for and is not the solid's own
  std::string measure = "";                           ///< of the solid, that the truth is or rests on; empty: none
  std::string item = "";                              ///< what is counted: "roll", "times"
  std::optional<int> round_to = std::nullopt;         ///< decimals that the problem asks for
  bool has_circle = false;                            ///< of a solid on a circle: the truth may rest on a value of π
  words::Message first_step = {};                     ///< what to say of a number that nothing leads to

  // What mistakes are worked out from.
  std::optional<lessons::Supply> supply = std::nullopt;         ///< of a count of packs
  std::optional<reasoning::SupplyAnswer> packs = std::nullopt;  ///< the same
  std::vector<Packing> ways = {};                               ///< of items that are packed
  std::optional<exact::Number> factor = std::nullopt;           ///< of a copy whose measure is asked for
  int known_dimension = 2;  ///< of what is known of a copy whose factor is asked for
};
/// Errors: a sentence, when the problem does not ask for it. An empty `find` is the first thing that is asked; a word
/// problem's count comes before the measure that it needs.
[[nodiscard]] Result<Question, words::Message> question_of(const lessons::Problem& problem,
                                                           const std::string& find = "");

/// The answers of the same figure with one of its rounded labels left out, so that the exact root takes its place.
[[nodiscard]] std::vector<exact::Number> answers_from_roots(const lessons::Problem& problem, const Question& question);

/// A face as an account of faces sees it.
struct FigureFace {
  FaceId id;
  solids::FaceRole role = solids::FaceRole::Face;
  solids::GroupId group;
  double area = 0;
  bool counts = false;     ///< belongs to what is asked
  bool is_halved = false;  ///< its area is worked as half of a product
};

/// The measures and faces of a problem in doubles, from which wrong numbers are worked out.
struct Figure {
  using Values = std::map<std::string, double, std::less<>>;

  const lessons::Problem* problem = nullptr;
  const Question* question = nullptr;
  double truth = 0;     ///< in the solid's own unit; 0 where the answer is a name
  double to_asked = 1;  ///< from that unit to the one in which the answer is asked
  Values values;        ///< every measure of the solid
  std::vector<FigureFace> faces;
  double closed = 0;  ///< surface area with every face
  double volume = 0;
  double edges = 0;            ///< length of all edges together
  std::vector<double> labels;  ///< lengths that the lesson gives, each once, in the solid's unit
  std::vector<std::string> label_names;

  [[nodiscard]] std::optional<double> value(std::string_view name) const;
  [[nodiscard]] std::vector<const FigureFace*> of_role(solids::FaceRole role) const;
  [[nodiscard]] double area_of(solids::FaceRole role) const;  ///< sum
  [[nodiscard]] double base() const;                          ///< area of one base; 0 where there is none
  [[nodiscard]] const solids::Traits& traits() const { return problem->solid.traits(); }
  /// Whether the lateral faces are triangles that meet in one point.
  [[nodiscard]] bool has_triangles() const { return traits().has_apex && !traits().has_round_base; }
  /// The area of a face worked with other numbers for some symbols; NaN where that leaves none.
  [[nodiscard]] double area_with(const FigureFace& one, const Values& others) const;
  [[nodiscard]] const solids::Face& face(const FigureFace& face) const { return problem->solid.faces()[face.id]; }
};
/// Keeps pointers to both.
[[nodiscard]] Figure figure_of(const lessons::Problem& problem, const Question& question);

}  // namespace fw::practice
