#include "lessons/read_sheet.hpp"
#include "lessons/write_sheet.hpp"
#include "practice/read_choice.hpp"
#include "tasks/generate/net_sheets.hpp"
#include "tasks/nets/net_task.hpp"

// Whether a cut-out is a net of the solid, and why not.
namespace fw::tasks {
namespace {

using lessons::NetSheet;
using nets::Cutout;
using nets::FoldTest;
using nets::Misfit;
using practice::AnswerVerdict;
using practice::Diagnosis;
using practice::NetReason;
using words::message;
using words::Noun;

class IsNet : public NetTask {
 public:
  explicit IsNet(NetSheet sheet) : NetTask({std::move(sheet)}) {}

  [[nodiscard]] std::vector<NetChoice> net_choices(const Problem& problem, Seed seed) const override;
  [[nodiscard]] std::vector<NetChoice> net_reasons(const Problem& problem) const override;
  /// What is wrong stands with the wrong answer "yes".
  [[nodiscard]] std::size_t finding_of(std::size_t) const override { return 0; }
  [[nodiscard]] std::vector<reasoning::Step> net_steps(const Problem& problem) const override;
  void write(Members& members) const override { write_net(members, "is_it", lessons::sheet_text(sheets().front())); }
  [[nodiscard]] words::Message sentence(const Problem& problem) const override {
    return message("Is this a net of {solid:a}?", {{"solid", Noun{problem.solid.name()}}});
  }
  [[nodiscard]] std::string type(const Problem&) const override { return "is-net"; }
  [[nodiscard]] Result<words::Message, words::Message> answer(const Problem& problem,
                                                              const Question& question) const override {
    // What a "yes" would show is why it is no net.
    const NetChoice yes = net_choices(problem, {}).front();
    return yes.is_right ? NetTask::answer(problem, question) : message("no ({cause})", {{"cause", yes.cause}});
  }
  [[nodiscard]] Result<Diagnosis, words::Message> judged(const Problem& problem, const Question&,
                                                         std::string_view typed, std::uint64_t) const override {
    const std::optional<bool> is_yes = practice::read_yes_no(typed);
    return is_yes ? judged_choices(problem, {*is_yes ? std::size_t{0} : std::size_t{1}})
                  : Diagnosis{AnswerVerdict::Unrecognized, {}, message("Answer yes or no. Would it fold up?")};
  }
};

std::optional<Task> read_is_net(const JsonNode& net, const Problem& problem, const Context& context) {
  auto sheet = lessons::read_sheet(net, problem.solid, context);
  return sheet ? std::optional<Task>(IsNet(std::move(*sheet))) : std::nullopt;
}

std::optional<Problem> made_is_net(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      made_on_solid(blueprint, seed,
                    {"{Who} cut out this paper to make a model of {a thing}. Does it fold into the solid shown?",
                     "Here is a cutout for a model of {a thing}. Is it a net of the solid shown?",
                     "{Who} folds this paper into a model of {a thing}. Will it close up with no gap and no overlap?"});
  if (!problem) {
    return std::nullopt;
  }
  // Every second one is a net; the others fail in turn for each of the reasons that the solid has.
  std::optional<Cutout> cutout;
  if (blueprint.trap % 2 == 0) {
    cutout = drawn_net(problem->solid, seed);
  } else {
    static const std::vector<Trap> traps{Trap::Moved, Trap::Stretched, Trap::Short, Trap::Count};
    const bool hard = blueprint.level > 1;
    cutout = drawn_trap(problem->solid, traps[blueprint.trap / 2 % traps.size()], hard, seed);
    cutout = cutout ? cutout : drawn_trap(problem->solid, Trap::Moved, hard, seed);
  }
  auto sheet = cutout ? drawn_sheet(problem->solid, *cutout, blueprint.level, seed) : std::nullopt;
  if (!sheet || folds_up(problem->solid, sheet->cutout) != (blueprint.trap % 2 == 0)) {
    return std::nullopt;
  }
  problem->tasks = {IsNet(std::move(*sheet))};
  return problem;
}

}  // namespace

std::vector<NetChoice> IsNet::net_choices(const Problem& problem, Seed) const {
  const NetSheet& sheet = sheets().front();
  const FoldTest test = folded(problem, sheet.cutout);
  NetChoice yes{message("yes"), test.is_net(), "", message("Yes. It folds up, and every face is covered once.")};
  NetChoice no{message("no"), !test.is_net()};
  if (test.is_net()) {
    tell_choice(no, refused_net(problem, sheet, test), nullptr);
  } else {
    const NetReason reason = practice::net_reason(problem.solid, sheet.cutout, *test.finding);
    tell_choice(yes, reason, &*test.finding);
    no.message = message("Right, it is not a net. {reason}", {{"reason", reason.message}});
  }
  return {yes, no};
}

std::vector<NetChoice> IsNet::net_reasons(const Problem& problem) const {
  const Cutout& cutout = sheets().front().cutout;
  const FoldTest test = folded(problem, cutout);
  if (test.is_net()) {
    return {};
  }
  const Misfit misfit = test.finding->misfit;
  const bool is_count = misfit == Misfit::WrongCount;
  const bool is_place = misfit == Misfit::Collision || misfit == Misfit::SameSide || misfit == Misfit::Overlap;
  const bool is_height = misfit == Misfit::TooLow || misfit == Misfit::TooShort;
  const NetReason reason = practice::net_reason(problem.solid, cutout, *test.finding);
  std::vector<NetChoice> reasons{
      {message("It has the wrong number of pieces."), is_count, "N1",
       message("The number of pieces is right. Fold it in your head.")},
      {message("Two pieces land on the same face."), is_place, "N2",
       message("Each piece would land on its own face. Compare the pieces with the faces.")},
      {message("Edges that meet have different lengths."), !is_count && !is_place && !is_height, "N4",
       message("The edges that meet have the same length. Fold it in your head.")},
      {message("Some pieces are too short to meet."), is_height, "N8",
       message("No piece is too short. Look at where each one lands.")}};
  for (NetChoice& choice : reasons) {
    if (choice.is_right) {
      tell_choice(choice, {"", message("Right. {reason}", {{"reason", reason.message}})}, &*test.finding);
    }
  }
  return reasons;
}

std::vector<reasoning::Step> IsNet::net_steps(const Problem& problem) const {
  // What a "yes" would be told is why it is none.
  const NetChoice yes = net_choices(problem, {}).front();
  reasoning::Step step;
  step.reason = yes.is_right ? yes.message : message("It is not a net. {reason}", {{"reason", yes.message}});
  return {step};
}

NetAsk ask_is_net() { return {"is_it", {"ask", "pieces", "turn", "flip"}, read_is_net}; }

namespace row {
Row is_net() {
  Row row{"is-net"};
  row.made = {{32, "is-net", "is it a net?", practice::Heading::Nets, 1, "fold a net", any, made_is_net}};
  row.examples = {
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "net": {"ask": "is_it", "pieces": [{"face": 1},
         {"face": 3, "on": 1, "edge": 1, "by": 1}, {"face": 4, "on": 1, "edge": 2, "by": 1},
         {"face": 5, "on": 1, "edge": 3, "by": 1}, {"face": 6, "on": 1, "edge": 4, "by": 1},
         {"face": 2, "on": 2, "edge": 3, "by": 1}], "flip": true})",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "net": {"ask": "is_it", "pieces": [{"face": 1},
         {"face": 3, "on": 1, "edge": 1, "by": 1}]})",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
