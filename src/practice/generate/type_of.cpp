#include <algorithm>

#include "practice/figure.hpp"
#include "practice/generate/generate.hpp"

// Which type a problem is of, whoever made it.
namespace fw::practice {
namespace {

using lessons::NetAsk;
using lessons::Problem;

/// Everything that the types are told by.
struct Seen {
  const Problem& problem;
  const Question& question;

  [[nodiscard]] bool asks(Asked asked) const { return question.asked == asked; }
  [[nodiscard]] bool asks(NetAsk ask) const { return problem.net && problem.net->ask == ask; }
  [[nodiscard]] bool knows(const char* measure) const { return problem.known.count(measure) > 0; }
  [[nodiscard]] bool counts(const char* purpose) const {
    return asks(Asked::Count) && problem.supply->purpose == purpose;
  }
};

void collect_units(const solids::Description& description, std::vector<units::Unit>& all) {
  for (const auto& [key, value] : description.fields) {
    const auto* length = std::get_if<solids::LengthEntry>(&value);
    if (length != nullptr && length->written) {
      all.push_back(length->written->unit);
    }
  }
  for (const solids::Description& base : description.base) {
    collect_units(base, all);
  }
}

bool has_unlike_units(const Problem& problem) {
  std::vector<units::Unit> all;
  collect_units(problem.description, all);
  return std::any_of(all.begin(), all.end(), [&](const units::Unit& unit) { return !(unit == all.front()); });
}

struct Row {
  const char* key;
  bool (*is)(const Seen& seen);
};
/// The first row that is true tells the type; a new type gets a row of its own.
constexpr Row rows[] = {
    {"net-name", [](const Seen& seen) { return seen.asks(NetAsk::Name); }},
    {"choose-net", [](const Seen& seen) { return seen.asks(NetAsk::Choose); }},
    {"is-net", [](const Seen& seen) { return seen.asks(NetAsk::IsIt); }},
    {"complete-net", [](const Seen& seen) { return seen.asks(NetAsk::Complete); }},
    {"can-it-be", [](const Seen& seen) { return seen.question.form == Form::YesNo; }},
    {"find-mistake", [](const Seen& seen) { return seen.question.form == Form::Mistake; }},
    {"estimate", [](const Seen& seen) { return seen.question.form == Form::Interval; }},
    {"same-number", [](const Seen& seen) { return seen.question.form == Form::Same; }},
    {"least-surface", [](const Seen& seen) { return seen.asks(Asked::LeastSurface); }},
    {"purpose", [](const Seen& seen) { return seen.question.form == Form::Purpose; }},
    {"pack", [](const Seen& seen) { return seen.asks(Asked::Packed); }},
    {"factor", [](const Seen& seen) { return seen.asks(Asked::Scale); }},
    {"copy", [](const Seen& seen) { return seen.asks(Asked::CopyArea) || seen.asks(Asked::CopyVolume); }},
    {"cost", [](const Seen& seen) { return seen.asks(Asked::Count) && seen.problem.supply->price.has_value(); }},
    {"cover", [](const Seen& seen) { return seen.counts("cover"); }},
    {"edging", [](const Seen& seen) { return seen.counts("edge"); }},
    {"pour",
     [](const Seen& seen) { return seen.counts("fill") && seen.problem.supply->rounding == lessons::Rounding::Down; }},
    {"fill", [](const Seen& seen) { return seen.counts("fill"); }},
    {"asked-unit", [](const Seen& seen) { return seen.question.is_converted; }},
    {"open", [](const Seen& seen) { return seen.asks(Asked::Surface) && !seen.problem.open.empty(); }},
    {"surface", [](const Seen& seen) { return seen.asks(Asked::Surface); }},
    {"lateral", [](const Seen& seen) { return seen.asks(Asked::Lateral); }},
    {"base-area", [](const Seen& seen) { return seen.asks(Asked::BaseArea); }},
    {"chain", [](const Seen& seen) { return seen.asks(Asked::Volume) && seen.knows("surface_area"); }},
    {"units", [](const Seen& seen) { return seen.asks(Asked::Volume) && has_unlike_units(seen.problem); }},
    {"volume", [](const Seen& seen) { return seen.asks(Asked::Volume); }},
    {"edge-from-surface", [](const Seen& seen) { return seen.asks(Asked::Length) && seen.knows("surface_area"); }},
    {"right-triangle", [](const Seen& seen) { return seen.asks(Asked::Length) && seen.problem.known.empty(); }},
    {"edge-from-volume", [](const Seen& seen) { return seen.asks(Asked::Length); }},
    {"face-lengths", [](const Seen& seen) { return seen.question.form == Form::Lengths; }},
    {"faces", [](const Seen& seen) { return seen.asks(Asked::Faces); }},
    {"edges", [](const Seen& seen) { return seen.asks(Asked::Edges); }},
    {"vertices", [](const Seen& seen) { return seen.asks(Asked::Vertices); }},
    {"name", [](const Seen& seen) { return seen.asks(Asked::Name); }},
};

}  // namespace

std::string type_of(const Problem& problem) {
  const auto question = question_of(problem);
  if (!question) {
    return {};
  }
  const Seen seen{problem, *question};
  const auto* row = std::find_if(std::begin(rows), std::end(rows), [&](const Row& one) { return one.is(seen); });
  return row == std::end(rows) ? "" : row->key;
}

}  // namespace fw::practice
