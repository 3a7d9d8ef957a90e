#include "lessons/read_description.hpp"
#include "lessons/read_sheet.hpp"
#include "lessons/write_sheet.hpp"
#include "tasks/generate/net_sheets.hpp"
#include "tasks/nets/net_task.hpp"

// Which of several cut-outs is a net of the solid.
namespace fw::tasks {
namespace {

using lessons::NetSheet;
using nets::Cutout;

class ChooseNet : public NetTask {
 public:
  using NetTask::NetTask;

  [[nodiscard]] std::vector<NetChoice> net_choices(const Problem& problem, Seed) const override {
    std::vector<NetChoice> choices;
    for (std::size_t i = 0; i < sheets().size(); ++i) {
      choices.push_back(choice_of(problem, practice::letter(i), sheets()[i].cutout));
    }
    return choices;
  }
  [[nodiscard]] const NetSheet& sheet_for(std::size_t choice) const override { return sheets()[choice]; }
  [[nodiscard]] bool has_letters() const override { return true; }
  void write(Members& members) const override {
    std::string text = R"("nets": [)";
    for (const NetSheet& sheet : sheets()) {
      text += std::string(&sheet == &sheets().front() ? "" : ",") + "\n        {" + lessons::sheet_text(sheet) + "}";
    }
    write_net(members, "choose", text + "\n      ]");
  }
  [[nodiscard]] words::Message sentence(const Problem& problem) const override {
    return message("Which one is a net of {solid:a}?", {{"solid", Noun{problem.solid.name()}}});
  }
  [[nodiscard]] std::string type(const Problem&) const override { return "choose-net"; }
};

// ---- read ----

std::optional<Task> read_choose_net(const JsonNode& net, const Problem& problem, const Context& context) {
  const std::vector<JsonNode>* items = lessons::items_of(net, "nets", 2, lessons::limits::net_choices, context);
  if (items == nullptr) {
    return std::nullopt;
  }
  std::vector<NetSheet> sheets;
  for (std::size_t i = 0; i < items->size(); ++i) {
    const Context here = context.at("nets").at(std::to_string(i + 1));
    if (!(*items)[i].is(JsonNode::Kind::Object)) {
      here.fault((*items)[i], message("a cut-out to choose is an object with \"pieces\"; found {found}",
                                      {{"found", lessons::found_text((*items)[i])}}));
      continue;
    }
    lessons::check_keys((*items)[i], {"pieces", "turn", "flip"}, message("a cut-out to choose"), here);
    if (auto sheet = lessons::read_sheet((*items)[i], problem.solid, here)) {
      sheets.push_back(std::move(*sheet));
    }
  }
  if (sheets.size() != items->size()) {
    return std::nullopt;
  }
  std::vector<std::size_t> good;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    if (folds_up(problem.solid, sheets[i].cutout)) {
      good.push_back(i + 1);
    }
  }
  if (good.size() != 1) {
    const Noun solid{problem.solid.name()};
    context.at("nets").fault(
        *net.find("nets"),
        good.empty() ? message("none of these is a net of {solid:a}: exactly one of them must be", {{"solid", solid}})
                     : message("numbers {numbers:and} are nets of {solid:a}: exactly one of them must be",
                               {{"numbers", good}, {"solid", solid}}));
  }
  return ChooseNet(std::move(sheets));
}

// ---- made up ----

// A net of another solid with as many faces, its pieces given by their corners.
std::optional<Cutout> look_alike(const Problem& problem, const Blueprint& blueprint, Seed& seed) {
  std::vector<Subject> others;
  for (const Subject& subject : subjects()) {
    const Family& family = *subject.family;
    if (family.level <= blueprint.level && family.shape != blueprint.form().shape &&
        family.faces == problem.solid.faces().size()) {
      others.push_back(subject);
    }
  }
  constexpr std::size_t tries = 4;
  for (std::size_t i = 0; i < tries && !others.empty(); ++i) {
    const Subject& subject = one_of(others, seed);
    const auto other = made_problem(subject.family->draw(seed, blueprint.level, Labels::All, *subject.form), "");
    if (other && other->solid.name() != problem.solid.name()) {
      return unmarked(drawn_net(other->solid, seed));
    }
  }
  return std::nullopt;
}

// Three cut-outs that are no nets, of different sorts as far as there are.
std::vector<NetSheet> wrong_sheets(const Problem& problem, const Blueprint& blueprint, Seed& seed) {
  constexpr std::size_t wanted = 3;
  constexpr std::size_t rounds = 3;
  constexpr std::ptrdiff_t most_of_one_sort = 2;
  std::vector<NetSheet> sheets;
  std::vector<nets::Misfit> misfits;
  std::vector<int> sorts{0, 1, 2};
  shuffle(sorts, seed);
  sorts.insert(sorts.begin(), 0);  // one that only folding finds out comes first
  if (blueprint.level == 1) {
    sorts.insert(sorts.begin() + 2, 3);
  }
  for (std::size_t i = 0; i < rounds * sorts.size() && sheets.size() < wanted; ++i) {
    const int sort = sorts[i % sorts.size()];
    const bool is_pointed = seed.below(2) == 0;
    std::optional<Cutout> cutout =
        sort == 0   ? drawn_trap(problem.solid, Trap::Moved, blueprint.level > 1, seed)
        : sort == 1 ? drawn_trap(problem.solid, is_pointed ? Trap::Short : Trap::Stretched, blueprint.level > 1, seed)
        : sort == 2 ? look_alike(problem, blueprint, seed)
                    : drawn_trap(problem.solid, Trap::Count, false, seed);
    auto sheet = cutout ? drawn_sheet(problem.solid, *cutout, blueprint.level, seed) : std::nullopt;
    const auto finding = sheet ? folded(problem, sheet->cutout).finding : std::optional<nets::Finding>{};
    if (finding && std::count(misfits.begin(), misfits.end(), finding->misfit) < most_of_one_sort) {
      misfits.push_back(finding->misfit);
      sheets.push_back(std::move(*sheet));
    }
  }
  return sheets;
}

std::optional<Problem> made_choose_net(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      made_on_solid(blueprint, seed,
                    {"{Who} has four cutouts for a model of {a thing}. Which cutout folds into the solid shown?",
                     "Only one of these cutouts folds into a model of {a thing} like the one shown. Which is it?",
                     "Which cutout should {who} use to fold a model of {a thing} like the one shown?"});
  auto right =
      problem ? drawn_sheet(problem->solid, drawn_net(problem->solid, seed), blueprint.level, seed) : std::nullopt;
  if (!right) {
    return std::nullopt;
  }
  std::vector<NetSheet> sheets = wrong_sheets(*problem, blueprint, seed);
  if (sheets.size() < 3) {
    return std::nullopt;
  }
  sheets.push_back(std::move(*right));
  shuffle(sheets, seed);
  problem->tasks = {ChooseNet(std::move(sheets))};
  return problem;
}

}  // namespace

NetAsk ask_choose_net() { return {"choose", {"ask", "nets"}, read_choose_net}; }

namespace row {
Row choose_net() {
  Row row{"choose-net"};
  row.made = {{31, "choose-net", "choose the net", practice::Heading::Nets, 1, "fold a net", any, made_choose_net}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "7 cm"}, "net": {"ask": "choose", "nets": [
        {"pieces": [{"face": 1}, {"face": 3, "on": 1, "edge": 1, "by": 1}, {"face": 4, "on": 1, "edge": 2, "by": 1},
         {"face": 5, "on": 1, "edge": 3, "by": 1}, {"face": 6, "on": 1, "edge": 4, "by": 1},
         {"face": 2, "on": 2, "edge": 3, "by": 1}]},
        {"pieces": [{"face": 1}, {"face": 3, "on": 1, "edge": 1, "by": 1}], "turn": 90}]})"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
