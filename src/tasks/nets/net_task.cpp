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
using words::message;

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
  all.reserve(choices.size());
  for (NetChoice& one : choices) {
    all.push_back({std::move(one.text), one.is_right, std::move(one.cause), std::move(one.message), {}});
  }
  return all;
}

words::Message right_choices(const std::vector<NetChoice>& choices) {
  std::vector<words::Message> right;
  for (const NetChoice& choice : choices) {
    if (choice.is_right) {
      right.push_back(choice.text);
    }
  }
  return message("{choices:,}", {{"choices", right}});
}

std::vector<NetChoice> net_choices(const Problem& problem, practice::Seed seed) {
  return net_of(problem).net_choices(problem, seed);
}

std::vector<reasoning::Step> net_steps(const Problem& problem) { return net_of(problem).net_steps(problem); }

words::Message net_answer(const Problem& problem) { return *net_of(problem).answer(problem, {}); }

FoldTest folded(const Problem& problem, const Cutout& cutout) {
  return solids::fold_test(problem.solid.body(), cutout);
}

bool folds_up(const solids::Solid& solid, const Cutout& cutout) {
  return solids::fold_test(solid.body(), cutout).is_net();
}

NetReason refused_net(const Problem& problem, const lessons::NetSheet& sheet, const FoldTest& test) {
  const bool lies_unusual = sheet.turn_degrees != 0 || sheet.flipped;
  if (lies_unusual && is_usual(problem, sheet.cutout, test)) {
    return {"N11", message("Turning the paper doesn't change what it folds into. Turn it back and look again.")};
  }
  return {"N10", message("It does fold up. A net can look unusual. Pick one piece as the floor and fold up the rest.")};
}

void tell_choice(NetChoice& choice, const NetReason& reason, const Finding* finding) {
  choice.cause = reason.cause;
  choice.message = reason.message;
  if (finding != nullptr) {
    choice.pieces = finding->pieces;
    choice.edges = finding->edges;
    choice.faces = finding->doubled;
    choice.faces.insert(choice.faces.end(), finding->open.begin(), finding->open.end());
  }
}

NetChoice choice_of(const Problem& problem, const std::string& letter, const Cutout& cutout) {
  const FoldTest test = folded(problem, cutout);
  NetChoice choice{words::Message(letter), test.is_net(), "", message("Yes, that one folds up."), {}, {}, {}};
  if (!test.is_net()) {
    tell_choice(choice, practice::net_reason(problem.solid, cutout, *test.finding), &*test.finding);
  }
  return choice;
}

void write_net(Members& members, const char* ask, const std::string& rest) {
  members.emplace_back("net", R"({"ask": ")" + std::string(ask) + "\", " + rest + "}");
}

std::optional<Problem> made_on_solid(const Blueprint& blueprint, Seed& seed, const std::vector<std::string>& stories) {
  return made_problem(blueprint.draw(seed, Labels::All), told(stories, blueprint));
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
    const std::string example =
        R"({"ask": "is_it", "pieces": [{"face": 1}, )" + std::string(lessons::piece_example) + "]}";
    context.fault(node, message("\"net\" is an object such as {example}; found {found}",
                                {{"example", example}, {"found", lessons::found_text(node)}}));
    return {};
  }
  const JsonNode* word_node = node.find("ask");
  if (word_node == nullptr) {
    context.fault(
        node, message("the key \"ask\" is missing here{suggestion}", {{"suggestion", lessons::suggestion("", words)}}));
    return {};
  }
  const std::string* word = lessons::text_at(*word_node, message("what is asked about a net"), context.at("ask"));
  if (word == nullptr) {
    return {};
  }
  const auto found = std::find(words.begin(), words.end(), *word);
  if (found == words.end()) {
    context.at("ask").fault(
        *word_node, message("{word} can't be asked about a net{suggestion}",
                            {{"word", lessons::in_quotes(*word)}, {"suggestion", lessons::suggestion(*word, words)}}));
    return {};
  }
  if (!solids::has_other_nets(text.problem.solid.body())) {
    context.fault(node,
                  message("questions about nets are about solids with flat faces, and {solid:a} has a curved side",
                          {{"solid", words::Noun{text.problem.solid.name()}}}));
    return {};
  }
  const NetAsk& ask = net_asks()[static_cast<std::size_t>(found - words.begin())];
  lessons::check_keys(node, ask.keys, message("a question about a net like this"), context);
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
    steps.back().reason = message("{choice}: {reason}", {{"choice", choice.text}, {"reason", choice.message}});
    steps.back().faces = choice.faces;
  }
  return steps;
}

Result<Question, words::Message> NetTask::question(const Problem&) const {
  Question question;
  question.find = key();
  return question;
}

Result<Explanation, words::Message> NetTask::explained(const Problem& problem, const SolutionOptions&) const {
  return reasoning::explained_alone(
      problem.solid, {key(), "", {}, message("net"), net_steps(problem), {}, std::nullopt, 0, *answer(problem, {})});
}

practice::ExplainedAt NetTask::explained_at(const Problem&) const { return practice::ExplainedAt::Elsewhere; }

Result<std::vector<Hint>, words::Message> NetTask::hints(const Problem& problem,
                                                         const reasoning::ClassNotation&) const {
  const std::size_t faces = problem.solid.faces().size();
  return std::vector<Hint>{
      {message("Count the pieces. The solid has {count} faces.", {{"count", faces}}), std::nullopt, {}, {}},
      {message("Pick one piece as the floor and fold up the others in your head."), std::nullopt, {}, {}},
      {message("Edges that meet have the same length. Follow each edge to the one it meets."), std::nullopt, {}, {}}};
}

Result<std::vector<Choice>, words::Message> NetTask::choices(const Problem& problem, const Question&,
                                                             Seed& seed) const {
  return plain(net_choices(problem, seed));
}

Result<words::Message, words::Message> NetTask::answer(const Problem& problem, const Question&) const {
  return right_choices(net_choices(problem, {}));
}

Result<Diagnosis, words::Message> NetTask::judged(const Problem& problem, const Question&, std::string_view typed,
                                                  std::uint64_t) const {
  const auto chosen = practice::read_letters(typed, letters());
  if (chosen && (takes_several() || chosen->size() == 1)) {
    return judged_choices(problem, *chosen);
  }
  const std::string last = practice::letter(letters() - 1);
  return Diagnosis{AnswerVerdict::Unrecognized,
                   {},
                   takes_several() ? message("Answer with letters from A to {last}.", {{"last", last}})
                                   : message("Answer with one letter from A to {last}.", {{"last", last}})};
}

}  // namespace fw::tasks
