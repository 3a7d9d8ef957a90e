#include "tasks/nets/net_task.hpp"

#include <algorithm>
#include <optional>

#include "base/ensure.hpp"
#include "lessons/read_piece.hpp"
#include "practice/read_choice.hpp"
#include "solids/body/body_nets.hpp"
#include "tasks/catalog.hpp"

// What the questions about nets share.
namespace fw::tasks {
namespace {

using nets::Cutout;
using nets::Finding;
using nets::FoldTest;
using practice::AnswerVerdict;
using practice::Diagnosis;
using practice::Hint;
using practice::NetReason;

const NetTask& net_of(const Problem& problem) {
  const NetTask* task = net_asked(problem);
  ensure(task != nullptr, "a net was asked about in a problem that has none");
  return *task;
}

const std::vector<NetAsk>& net_asks() {
  static const std::vector<NetAsk> table{ask_net_name(), ask_choose_net(), ask_is_net(), ask_complete_net()};
  return table;
}

// Whether it is the usual net, so that only its lying turned or flipped can be what is unfamiliar.
bool is_usual(const Problem& problem, const Cutout& cutout, const FoldTest& test) {
  const solids::Body& body = problem.solid.body();
  return solids::can_list_nets(body) && solids::net_class(body, solids::tree_of(body, cutout, test)) ==
                                            solids::net_class(body, problem.solid.classic_net());
}

}  // namespace

const NetTask* net_asked(const Problem& problem) { return practice::task_as<NetTask>(problem); }

std::vector<Choice> plain(std::vector<NetChoice> choices) {
  std::vector<Choice> all;
  for (NetChoice& one : choices) {
    all.push_back({std::move(one.text), one.is_right, std::move(one.cause), std::move(one.message), {}});
  }
  return all;
}

std::vector<NetChoice> net_choices(const Problem& problem, practice::Seed seed) {
  return net_of(problem).net_choices(problem, seed);
}

std::vector<reasoning::Step> net_steps(const Problem& problem) { return net_of(problem).net_steps(problem); }

std::string net_answer(const Problem& problem) { return *net_of(problem).answer(problem, {}); }

FoldTest folded(const Problem& problem, const Cutout& cutout) {
  return solids::fold_test(problem.solid.body(), cutout);
}

bool folds_up(const solids::Solid& solid, const Cutout& cutout) {
  return solids::fold_test(solid.body(), cutout).is_net();
}

NetReason refused_net(const Problem& problem, const lessons::NetSheet& sheet, const FoldTest& test) {
  const bool lies_unusual = sheet.turn_degrees != 0 || sheet.flipped;
  if (lies_unusual && is_usual(problem, sheet.cutout, test)) {
    return {"N11",
            words::message("Turning the paper would not change what it folds into. Turn it back and look again.")};
  }
  return {"N10",
          words::message("It would fold up. A net can look unusual: choose one piece as the floor and fold the rest.")};
}

void tell_choice(NetChoice& choice, const NetReason& reason, const Finding* finding) {
  choice.cause = reason.cause;
  choice.message = said(reason.message);
  if (finding != nullptr) {
    choice.pieces = finding->pieces;
    choice.edges = finding->edges;
    choice.faces = finding->doubled;
    choice.faces.insert(choice.faces.end(), finding->open.begin(), finding->open.end());
  }
}

NetChoice choice_of(const Problem& problem, const std::string& text, const Cutout& cutout) {
  const FoldTest test = folded(problem, cutout);
  NetChoice choice{text, test.is_net(), "", "Yes: that one folds up.", {}, {}, {}};
  if (!test.is_net()) {
    tell_choice(choice, practice::net_reason(problem.solid, cutout, *test.finding), &*test.finding);
  }
  return choice;
}

void write_net(Members& members, const char* ask, const std::string& rest) {
  members.emplace_back("net", R"({"ask": ")" + std::string(ask) + "\", " + rest + "}");
}

std::optional<Problem> made_on_solid(const Blueprint& blueprint, Seed& seed, const std::vector<std::string>& stories) {
  return made_problem(blueprint.family->draw(seed, blueprint.level, Labels::All, blueprint.unit),
                      told(stories, blueprint));
}

// ---- read ----

std::vector<Task> read_net(const TaskText& text) {
  const JsonNode& node = *text.node.find("net");
  const Context context = text.context.at("net");
  std::vector<std::string> words;
  for (const NetAsk& ask : net_asks()) {
    words.emplace_back(ask.word);
  }
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, R"("net" is an object such as {"ask": "is_it", "pieces": [{"face": 1}, )" +
                            std::string(lessons::piece_example) + "]}; found " + lessons::found_text(node));
    return {};
  }
  const JsonNode* word_node = node.find("ask");
  if (word_node == nullptr) {
    context.fault(node, "the key \"ask\" is missing here" + lessons::suggestion("", words));
    return {};
  }
  const std::string* word = lessons::text_at(*word_node, "what is asked about a net", context.at("ask"));
  if (word == nullptr) {
    return {};
  }
  const auto found = std::find(words.begin(), words.end(), *word);
  if (found == words.end()) {
    context.at("ask").fault(
        *word_node, lessons::in_quotes(*word) + " cannot be asked about a net" + lessons::suggestion(*word, words));
    return {};
  }
  const NetAsk& ask = net_asks()[static_cast<std::size_t>(found - words.begin())];
  lessons::check_keys(node, ask.keys, "a net that is asked this way", context);
  const auto task = ask.read(node, text.problem, context);
  return task ? std::vector<Task>{*task} : std::vector<Task>{};
}

// ---- as a type of question ----

std::vector<NetChoice> NetTask::net_reasons(const Problem&) const { return {}; }

Cutout NetTask::cutout_for(const Problem&, std::size_t choice) const { return sheet_for(choice).cutout; }

Diagnosis NetTask::judged_choices(const Problem& problem, const std::vector<std::size_t>& chosen) const {
  const std::vector<NetChoice> choices = net_choices(problem, {});
  ensure(!chosen.empty() && chosen.front() < choices.size(), "an answer without a choice cannot be judged");
  const NetChoice& choice = choices[chosen.front()];
  if (choice.is_right) {
    return {AnswerVerdict::Right, {}, choice.message};
  }
  return {AnswerVerdict::Recognized, {{choice.cause, choice.message, choice.faces, false}}, choice.message};
}

std::vector<reasoning::Step> NetTask::net_steps(const Problem& problem) const {
  std::vector<reasoning::Step> steps;
  for (const NetChoice& choice : net_choices(problem, {})) {
    steps.emplace_back();
    steps.back().reason = choice.text + ": " + choice.message;
    steps.back().faces = choice.faces;
  }
  return steps;
}

Result<Question, std::string> NetTask::question(const Problem&) const {
  Question question;
  question.find = key();
  return question;
}

Result<Explanation, std::string> NetTask::explained(const Problem& problem, const SolutionOptions&) const {
  return reasoning::explained_alone(
      problem.solid, {key(), "", "", "net", net_steps(problem), {}, std::nullopt, 0, *answer(problem, {})});
}

practice::ExplainedAt NetTask::explained_at(const Problem&) const { return practice::ExplainedAt::Elsewhere; }

Result<std::vector<Hint>, std::string> NetTask::hints(const Problem& problem) const {
  const std::string faces = std::to_string(problem.solid.faces().size());
  return std::vector<Hint>{
      {"Count the pieces. The solid has " + faces + " faces.", std::nullopt, {}, {}},
      {"Choose one piece as the floor and fold the others up in your head.", std::nullopt, {}, {}},
      {"Edges that meet are equally long. Follow each edge to the one that it meets.", std::nullopt, {}, {}}};
}

Result<std::vector<Choice>, std::string> NetTask::choices(const Problem& problem, const Question&, Seed& seed) const {
  return plain(net_choices(problem, seed));
}

Result<std::string, std::string> NetTask::answer(const Problem& problem, const Question&) const {
  std::string text;
  for (const NetChoice& choice : net_choices(problem, {})) {
    text += choice.is_right ? (text.empty() ? "" : ", ") + choice.text : "";
  }
  return text;
}

Result<Diagnosis, std::string> NetTask::judged(const Problem& problem, const Question&, std::string_view typed,
                                               std::uint64_t) const {
  const auto chosen = practice::read_letters(typed, letters());
  if (chosen && (takes_several() || chosen->size() == 1)) {
    return judged_choices(problem, *chosen);
  }
  return Diagnosis{AnswerVerdict::Unrecognized,
                   {},
                   "Answer with " + std::string(takes_several() ? "letters" : "one letter") + " from A to " +
                       practice::letter(letters() - 1) + "."};
}

}  // namespace fw::tasks
