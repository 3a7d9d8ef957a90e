#include "lessons/read_description.hpp"
#include "lessons/read_sheet.hpp"
#include "lessons/write_sheet.hpp"
#include "practice/quiz.hpp"
#include "reasoning/phrases.hpp"
#include "tasks/generate/net_sheets.hpp"
#include "tasks/look.hpp"
#include "tasks/nets/net_task.hpp"

// Which solid folds from a net.
namespace fw::tasks {
namespace {

using lessons::NetSheet;
using practice::Diagnosis;
using practice::Hint;

class NetName : public NetTask {
 public:
  explicit NetName(NetSheet sheet) : NetTask({std::move(sheet)}) {}

  [[nodiscard]] std::vector<NetChoice> net_choices(const Problem& problem, Seed seed) const override {
    std::vector<NetChoice> choices;
    for (const std::string& name : practice::name_options(problem.solid, seed)) {
      const practice::NameFeedback feedback = practice::name_feedback(problem.solid, name);
      const bool is_right = feedback.verdict == solids::NameVerdict::Right;
      choices.push_back({words::Message(name), is_right, is_right ? "" : "N9", feedback.message});
    }
    return choices;
  }
  [[nodiscard]] std::vector<reasoning::Step> net_steps(const Problem& problem) const override {
    reasoning::Step step;
    step.reason = reasoning::name_sentence(problem.solid);
    return {step};
  }
  [[nodiscard]] bool shows_solid() const override { return false; }
  void write(Members& members) const override { write_net(members, "name", lessons::sheet_text(sheets().front())); }
  [[nodiscard]] words::Message sentence(const Problem&) const override {
    return words::message("Which solid folds from this net?");
  }
  [[nodiscard]] std::string type(const Problem&) const override { return "net-name"; }
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(const Problem& problem,
                                                                const reasoning::ClassNotation&) const override {
    return practice::hints_to_look(looking_work(problem.solid, "name"));
  }
  [[nodiscard]] practice::AnswerForm form() const override { return practice::AnswerForm::CutoutName; }
  [[nodiscard]] words::Message asks_to_type() const override { return words::message("name of the solid"); }
  [[nodiscard]] Result<words::Message, words::Message> answer(const Problem& problem, const Question&) const override {
    return words::message("{solid}", {{"solid", words::Noun{problem.solid.name()}}});
  }
  [[nodiscard]] Result<Diagnosis, words::Message> judged(const Problem& problem, const Question&,
                                                         std::string_view typed, std::uint64_t) const override {
    return practice::judged_name(problem, typed);
  }
};

std::optional<Task> read_named_net(const JsonNode& net, const Problem& problem, const Context& context) {
  auto sheet = lessons::read_sheet(net, problem.solid, context);
  if (sheet && !folds_up(problem.solid, sheet->cutout)) {
    context.fault(
        net,
        message(
            "this is not a net of {solid:a}, so the problem can't ask for the name: fix the pieces, or ask \"is_it\"",
            {{"solid", Noun{problem.solid.name()}}}));
  }
  return sheet ? std::optional<Task>(NetName(std::move(*sheet))) : std::nullopt;
}

std::optional<Problem> made_net_name(const Blueprint& blueprint, Seed& seed) {
  auto problem = made_on_solid(blueprint, seed,
                               {"{Who} cuts out this net of a paper model. Which solid does it fold into?",
                                "This net is cut out of cardboard for the fair. Name the solid that it makes.",
                                "{Who} folds this net up and tapes it. Which solid is it?"});
  auto sheet =
      problem ? drawn_sheet(problem->solid, drawn_net(problem->solid, seed), blueprint.level, seed) : std::nullopt;
  if (!sheet) {
    return std::nullopt;
  }
  problem->tasks = {NetName(std::move(*sheet))};
  return problem;
}

}  // namespace

NetAsk ask_net_name() { return {"name", {"ask", "pieces", "turn", "flip"}, read_named_net}; }

namespace row {
Row net_name() {
  Row row{"net-name", {"net"}};
  row.is_alone = true;
  row.read = read_net;
  row.made = {
      {30, "net-name", "name the solid from its net", practice::Heading::Nets, 1, "fold a net", any, made_net_name}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "7 cm"}, "net": {"ask": "name", "pieces": [{"face": 1},
         {"face": 3, "on": 1, "edge": 1, "by": 1}, {"face": 4, "on": 1, "edge": 2, "by": 1},
         {"face": 5, "on": 1, "edge": 3, "by": 1}, {"face": 6, "on": 1, "edge": 4, "by": 1},
         {"face": 2, "on": 2, "edge": 3, "by": 1}]})"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
