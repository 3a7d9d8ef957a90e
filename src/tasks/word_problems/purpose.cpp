#include "tasks/word_problems/purpose.hpp"

#include "practice/choice_parts.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/row.hpp"
#include "tasks/word_problems/supply_text.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::tasks {
namespace {

using lessons::Purpose;
using practice::Hint;
using reasoning::StepKind;

// ---- options ----

struct PurposeRow {
  const char* purpose;
  Message text;
  Message reply;  ///< where it is chosen and is not right
  std::vector<std::string> words;
};
const std::vector<PurposeRow>& purposes() {
  static const std::vector<PurposeRow> table{
      {"cover",
       message("cover: the areas of the faces, added"),
       message("That would be several faces. Does it cover several faces here, or something else?"),
       {"cover", "surface", "area", "faces", "lateral"}},
      {"fill",
       message("fill: a volume"),
       message("That would be the space inside. Does it fill the solid, or cover it?"),
       {"fill", "volume", "space"}},
      {"edge",
       message("along the edges: a length"),
       message("That would be a length. Does it run along a line, or does it spread out?"),
       {"edge", "length", "line"}},
      {"one face",
       message("one face: a single area"),
       message("That would be only one face. Does it touch only one face?"),
       {"one face", "base", "single", "one"}},
  };
  return table;
}

// ---- made up ----

struct PurposeStories {
  Purpose purpose;
  std::string measure;
  Stories texts;
};
// Some without a word that gives it away. Source: common practice, no source.
const std::vector<PurposeStories>& purpose_stories() {
  static const std::vector<PurposeStories> table{
      {Purpose::Cover,
       "surface_area",
       {"{Who} glues glitter all over a model of {a thing}. What do they need to know to buy enough?",
        "{Who} wraps a model of {a thing} in paper. What do they need to know to buy enough paper?",
        "Frost forms all over a model of {a thing} that hangs outside. What measure tells how much of it turns "
        "white?"}},
      {Purpose::Fill,
       "volume",
       {"{Who} stuffs a cloth model of {a thing} with straw. What do they need to know to have enough?",
        "{Who} casts a model of {a thing} in plaster. What do they need to know to mix enough?",
        "A model of {a thing} rides in the back of a truck. What measure tells how much room it takes up?"}},
      {Purpose::Edge,
       "edges",
       {"{Who} hangs a string of lights along every edge of a model of {a thing}. What do they need to know to buy "
        "enough?",
        "{Who} bends wire into a frame in the shape of {a thing}. What do they need to know to cut enough wire?",
        "{Who} tapes every place where two faces of a model of {a thing} meet. What do they need to know to buy enough "
        "tape?"}},
      {Purpose::Cover,
       "base_area",
       {"{Who} cuts a felt pad to fit {the base} of a model of {a thing}. What do they need to know?",
        "Only {the base} of a model of {a thing} gets painted. What do they need to know to buy enough paint?",
        "{Who} presses {the base} of a model of {a thing} into the snow. What measure tells the size of the print?"}},
  };
  return table;
}
std::optional<Problem> made_purpose(const Blueprint& blueprint, Seed& seed) {
  const PurposeStories& stories = purpose_stories()[blueprint.turn % purpose_stories().size()];
  const lessons::Supply supply{stories.purpose, stories.measure, std::nullopt, ""};
  auto problem = made_problem(blueprint.draw(seed, Labels::ForArea), told(stories.texts, blueprint));
  if (problem) {
    problem->tasks = {AskedPurpose(supply), WordProblem(supply)};
  }
  return problem;
}

}  // namespace

std::string AskedPurpose::purpose() const {
  return supply_.measure == "base_area" && supply_.purpose == Purpose::Cover ? "one face" : word_of(supply_.purpose);
}

void AskedPurpose::write(Members& members) const { members.emplace_back("supply", supply_text(supply_)); }

Result<Question, words::Message> AskedPurpose::question(const Problem&) const {
  Question question;
  question.find = key();
  return question;
}

std::optional<TaskWork> AskedPurpose::work(const Problem&, int places) const {
  const std::string kind = purpose();
  const Message thing =
      supply_.item.empty() ? message("The material") : message("{item:A}", {{"item", Noun{supply_.item}}});
  reasoning::TaskSheet sheet(places);
  sheet.steps().say(StepKind::Ask, message("Before you calculate: do you need an area, a volume or a length?"));
  const words::Value it = thing;
  sheet.steps().say(
      StepKind::Name,
      kind == "one face"
          ? message("{thing} covers only one face, so one area is enough, in square units.", {{"thing", it}})
      : kind == "cover" ? message("{thing} covers faces, so add their areas, in square units.", {{"thing", it}})
      : kind == "fill"  ? message("{thing} fills the space inside, so find a volume, in cubic units.", {{"thing", it}})
                        : message("{thing} runs along edges, so find a length.", {{"thing", it}}));
  return std::move(sheet).finished({key(), "", {}, message("kind of measure"), {}, {}, std::nullopt, 0, Message(kind)},
                                   message("It is about {kind}.", {{"kind", kind}}));
}

Result<Explanation, words::Message> AskedPurpose::explained(const Problem& problem,
                                                            const SolutionOptions& options) const {
  return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
}

Result<std::vector<Hint>, words::Message> AskedPurpose::hints(const Problem&, const reasoning::ClassNotation&) const {
  return std::vector<Hint>{
      {message("Decide what kind of quantity it is. You don't have to calculate anything."), std::nullopt, {}, {}},
      {message("Think of the real thing. Does it cover faces, go inside, or run along a line?"), std::nullopt, {}, {}},
      {message("Does it touch every face that counts, or only one?"), std::nullopt, {}, {}}};
}

Result<std::vector<Choice>, words::Message> AskedPurpose::choices(const Problem&, const Question&, Seed&) const {
  std::vector<Choice> choices;
  for (const PurposeRow& row : purposes()) {
    choices.push_back(row.purpose == purpose() ? practice::right_choice(row.text, message("Right."))
                                               : practice::wrong_choice(row.text, "L1", row.reply));
  }
  return choices;
}

std::optional<std::size_t> AskedPurpose::option_meant(const Question&, const std::vector<Choice>&,
                                                      const std::string& typed) const {
  const std::string low = practice::lowered(typed);
  for (const char* one : {"one", "a single", "single"}) {
    if (low.rfind(one, 0) == 0) {
      return purposes().size() - 1;
    }
  }
  for (std::size_t i = 0; i < purposes().size(); ++i) {
    for (const std::string& word : purposes()[i].words) {
      if (low.find(word) != std::string::npos) {
        return i;
      }
    }
  }
  return std::nullopt;
}

namespace row {
Row purpose() {
  Row row{"purpose"};
  row.made = {{22, "purpose", "cover, fill or go around", practice::Heading::DecideAndCheck, 1, "decide", has_bases,
               made_purpose}};
  row.examples = {
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["purpose"], "supply": {"fill": "volume"})",
      R"("solid": {"kind": "prism", "base": {"shape": "square", "side": "4 cm"}, "height": "7 cm"}, "find": ["purpose"],
         "supply": {"cover": "base_area"})",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
