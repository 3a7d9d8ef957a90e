#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "lessons/net_sheet.hpp"
#include "nets/fold_test.hpp"
#include "practice/net_reason.hpp"
#include "practice/task_type.hpp"
#include "tasks/row.hpp"

namespace fw::tasks {

/// An answer that can be chosen for a question about nets. Messages are short, conditional, with one thing to do.
struct NetChoice {
  words::Message text;  ///< "yes", "B", "square pyramid"; of a reason: a short sentence
  bool is_right = false;
  std::string cause = {};                    ///< "N2"; empty where it is right
  words::Message message = {};               ///< what to say to whoever chooses it
  std::vector<nets::PieceId> pieces = {};    ///< to be lit on the cut-out of this choice: cutout_for()
  std::vector<nets::PieceEdge> edges = {};   ///< two edges that would meet and differ, to be lit with them
  std::vector<geometry::FaceId> faces = {};  ///< of the solid: those covered twice, then those left open
};

/// A question about nets of the problem's solid: the key "net".
class NetTask : public practice::TaskType {
 public:
  explicit NetTask(std::vector<lessons::NetSheet> sheets) : sheets_(std::move(sheets)) {}

  /// The cut-outs that lie before the class: one, or several to choose from.
  [[nodiscard]] const std::vector<lessons::NetSheet>& sheets() const { return sheets_; }

  // ---- what each of them states ----

  /// The choices, in the order in which they are shown.
  [[nodiscard]] virtual std::vector<NetChoice> net_choices(const Problem& problem, practice::Seed seed) const = 0;
  /// What a class can say after "no": by count, by place, by edges, by height. Exactly one is right; empty where the
  /// cut-out is a net, or nobody can say "no".
  [[nodiscard]] virtual std::vector<NetChoice> net_reasons(const Problem& problem) const;
  /// The sheet that a choice is about.
  [[nodiscard]] virtual const lessons::NetSheet& sheet_for(std::size_t) const { return sheets_.front(); }
  /// The cut-out to draw and to fold for a choice.
  [[nodiscard]] virtual nets::Cutout cutout_for(const Problem& problem, std::size_t choice) const;
  /// The choice whose findings tell what is wrong with the card of a choice.
  [[nodiscard]] virtual std::size_t finding_of(std::size_t choice) const { return choice; }
  /// Judges choices by their numbers: one, or all that were chosen where several are asked for.
  [[nodiscard]] virtual practice::Diagnosis judged_choices(const Problem& problem,
                                                           const std::vector<std::size_t>& chosen) const;
  /// Why the right answer is right: one step a choice.
  [[nodiscard]] virtual std::vector<reasoning::Step> net_steps(const Problem& problem) const;
  /// Its choices are cards or places with letters.
  [[nodiscard]] virtual bool has_letters() const { return false; }
  /// More than one choice can be right, and all of them are asked for.
  [[nodiscard]] virtual bool takes_several() const { return false; }
  /// The solid stands beside the card.
  [[nodiscard]] virtual bool shows_solid() const { return true; }
  /// The piece that is not there yet, and where it could hang.
  [[nodiscard]] virtual const lessons::PieceEntry* missing() const { return nullptr; }
  [[nodiscard]] virtual std::vector<nets::Joint> places() const { return {}; }

  // ---- as a type of question ----

  [[nodiscard]] std::string key() const override { return "net"; }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override;
  [[nodiscard]] practice::ExplainedAt explained_at(const Problem& problem) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] practice::AnswerForm form() const override { return practice::AnswerForm::Cutout; }
  [[nodiscard]] Result<std::vector<Choice>, words::Message> choices(const Problem& problem, const Question& question,
                                                                    practice::Seed& seed) const override;
  /// As a key says it: "square pyramid", "B", "yes", "no (N2)", "A, C".
  [[nodiscard]] Result<words::Message, words::Message> answer(const Problem& problem,
                                                              const Question& question) const override;
  [[nodiscard]] Result<practice::Diagnosis, words::Message> judged(const Problem& problem, const Question& question,
                                                                   std::string_view typed,
                                                                   std::uint64_t seed) const override;

 protected:
  /// How many letters can be typed.
  [[nodiscard]] virtual std::size_t letters() const { return sheets_.size(); }

 private:
  std::vector<lessons::NetSheet> sheets_;
};

/// The question about nets of a problem; null where it asks for something else.
[[nodiscard]] const NetTask* net_asked(const Problem& problem);

/// As any other choices: what they light up lies on the card, not on the solid.
[[nodiscard]] std::vector<Choice> plain(std::vector<NetChoice> choices);
/// "A, C".
[[nodiscard]] words::Message right_choices(const std::vector<NetChoice>& choices);

// ---- of the problem's question about nets; it is required to be there ----

[[nodiscard]] std::vector<NetChoice> net_choices(const Problem& problem, practice::Seed seed = {});
[[nodiscard]] std::vector<reasoning::Step> net_steps(const Problem& problem);
[[nodiscard]] words::Message net_answer(const Problem& problem);

// ---- for the files of the questions ----

[[nodiscard]] nets::FoldTest folded(const Problem& problem, const nets::Cutout& cutout);
[[nodiscard]] bool folds_up(const solids::Solid& solid, const nets::Cutout& cutout);
/// What stands with a choice: why it is none, or why it is one that was refused.
void tell_choice(NetChoice& choice, const practice::NetReason& reason, const nets::Finding* finding);
[[nodiscard]] practice::NetReason refused_net(const Problem& problem, const lessons::NetSheet& sheet,
                                              const nets::FoldTest& test);
/// A choice that stands for a cut-out: right where it is a net.
[[nodiscard]] NetChoice choice_of(const Problem& problem, const std::string& letter, const nets::Cutout& cutout);
/// {"ask": "is_it", ...}: the rest as JSON text without braces.
void write_net(Members& members, const char* ask, const std::string& rest);
/// A problem made up on a solid of the blueprint, with nothing asked yet.
[[nodiscard]] std::optional<Problem> made_on_solid(const Blueprint& blueprint, practice::Seed& seed,
                                                   const std::vector<std::string>& stories);

/// A word of the key "ask" and how the rest is read. Errors: told to the context; nothing is returned then.
struct NetAsk {
  const char* word;
  std::vector<std::string> keys;  ///< of the net
  std::optional<Task> (*read)(const JsonNode& net, const Problem& problem, const Context& context);
};
[[nodiscard]] NetAsk ask_net_name();
[[nodiscard]] NetAsk ask_choose_net();
[[nodiscard]] NetAsk ask_is_net();
[[nodiscard]] NetAsk ask_complete_net();
/// Reads the key "net".
[[nodiscard]] std::vector<Task> read_net(const TaskText& text);

}  // namespace fw::tasks
