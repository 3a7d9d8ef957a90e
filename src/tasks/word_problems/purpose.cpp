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
       message("edge: a length"),
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

struct Story {
  Purpose purpose;
  std::string measure, text;
};
// As many of each purpose; some without a word that gives it away. Source: common practice, no source.
const std::vector<Story>& purpose_stories() {
  static const std::vector<Story> table{
      {Purpose::Cover, "surface_area", "Gold glitter is glued all over {a thing}. What has to be known to buy enough?"},
      {Purpose::Fill, "volume", "{A thing} is stuffed with straw. What has to be known to have enough?"},
      {Purpose::Edge, "edges",
       "A string of lights follows every edge of {a thing}. What has to be known to buy enough?"},
      {Purpose::Cover, "base_area", "A felt pad goes under {a thing}. What has to be known to cut it?"},
      {Purpose::Cover, "surface_area", "How much cardboard does it take to make {a thing}?"},
      {Purpose::Fill, "volume", "How much plaster is cast in the shape of {a thing}?"},
      {Purpose::Edge, "edges", "How much wire does it take to bend a frame in the shape of {a thing}?"},
      {Purpose::Cover, "base_area", "How much of the stage floor does {a thing} take up?"},
      {Purpose::Cover, "surface_area", "Frost settles on {a thing} that hangs in the air. How much of it is white?"},
      {Purpose::Fill, "volume", "How much room does {a thing} take up in the cart?"},
      {Purpose::Edge, "edges", "Tape goes wherever two faces of {a thing} meet. How much tape is that?"},
      {Purpose::Cover, "base_area", "Snow melts where {a thing} stood. How large is the dry spot?"},
  };
  return table;
}
std::optional<Problem> made_purpose(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  // Five is prime to their number, so that all have their turn, neighbors of different purposes.
  const Story& story = purpose_stories()[5 * blueprint.turn % purpose_stories().size()];
  const lessons::Supply supply{story.purpose, story.measure, std::nullopt, ""};
  auto problem = made_problem(blueprint.family->draw(seed, blueprint.level, Labels::ForArea, blueprint.unit),
                              told({story.text}, blueprint));
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
  row.made = {{22, "purpose", "cover, fill, edge or one face", practice::Heading::DecideAndCheck, 1, "decide",
               has_bases, made_purpose}};
  row.examples = {
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["purpose"], "supply": {"fill": "volume"})",
      R"("solid": {"kind": "prism", "base": {"shape": "square", "side": "4 cm"}, "height": "7 cm"}, "find": ["purpose"],
         "supply": {"cover": "base_area"})",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
