#include "practice/net_tasks.hpp"

#include <algorithm>
#include <optional>

#include "base/ensure.hpp"
#include "practice/choices.hpp"
#include "practice/quiz.hpp"
#include "practice/read_choice.hpp"
#include "reasoning/nouns.hpp"
#include "reasoning/phrases.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::practice {
namespace {

using lessons::NetAsk;
using lessons::NetTask;
using lessons::Problem;
using nets::Cutout;
using nets::Finding;
using nets::FoldTest;
using nets::Misfit;
using words::message;

const NetTask& task_of(const Problem& problem) {
  ensure(problem.net.has_value(), "a net was asked about in a problem that has none");
  return *problem.net;
}

FoldTest test_of(const Problem& problem, const Cutout& cutout) {
  return solids::fold_test(problem.solid.body(), cutout);
}

// Whether it is the usual net, so that only its lying turned or flipped can be what is unfamiliar.
bool is_usual(const Problem& problem, const Cutout& cutout, const FoldTest& test) {
  const solids::Body& body = problem.solid.body();
  return solids::can_list_nets(body) && solids::net_class(body, solids::tree_of(body, cutout, test)) ==
                                            solids::net_class(body, problem.solid.classic_net());
}

NetReason refused_net(const Problem& problem, const lessons::NetSheet& sheet, const FoldTest& test) {
  const bool lies_unusual = sheet.turn_degrees != 0 || sheet.flipped;
  if (lies_unusual && is_usual(problem, sheet.cutout, test)) {
    return {"N11", message("Turning the paper would not change what it folds into. Turn it back and look again.")};
  }
  return {"N10", message("It would fold up. A net can look unusual: choose one piece as the floor and fold the rest.")};
}

void tell(NetChoice& choice, const NetReason& reason, const Finding* finding) {
  choice.cause = reason.cause;
  choice.message = said(reason.message);
  if (finding != nullptr) {
    choice.pieces = finding->pieces;
    choice.edges = finding->edges;
    choice.faces = finding->doubled;
    choice.faces.insert(choice.faces.end(), finding->open.begin(), finding->open.end());
  }
}

// A choice that stands for a cut-out: right where it is a net.
NetChoice choice_of(const Problem& problem, const std::string& text, const Cutout& cutout) {
  const FoldTest test = test_of(problem, cutout);
  NetChoice choice{text, test.is_net(), "", "Yes: that one folds up.", {}, {}, {}};
  if (!test.is_net()) {
    tell(choice, net_reason(problem.solid, cutout, *test.finding), &*test.finding);
  }
  return choice;
}

std::vector<NetChoice> yes_and_no(const Problem& problem) {
  const lessons::NetSheet& sheet = task_of(problem).sheets.front();
  const FoldTest test = test_of(problem, sheet.cutout);
  NetChoice yes{"yes", test.is_net(), "", "Yes: it folds up, and every face is covered once.", {}, {}, {}};
  NetChoice no{"no", !test.is_net(), "", "", {}, {}, {}};
  if (test.is_net()) {
    tell(no, refused_net(problem, sheet, test), nullptr);
  } else {
    const NetReason reason = net_reason(problem.solid, sheet.cutout, *test.finding);
    tell(yes, reason, &*test.finding);
    no.message = said(message("Right: it is none. {reason}", {{"reason", reason.message}}));
  }
  return {yes, no};
}

std::vector<NetChoice> name_choices(const Problem& problem, Seed seed) {
  std::vector<NetChoice> choices;
  for (const std::string& name : name_options(problem.solid, seed)) {
    const NameFeedback feedback = name_feedback(problem.solid, name);
    const bool is_right = feedback.verdict == solids::NameVerdict::Right;
    choices.push_back({name, is_right, is_right ? "" : "N9", said(feedback.message), {}, {}, {}});
  }
  return choices;
}

Diagnosis unread(const std::string& message) { return {AnswerVerdict::Unrecognized, {}, message}; }

// Several places of a missing piece, all of which should be right ones.
Diagnosis judged_places(const std::vector<NetChoice>& choices, const std::vector<std::size_t>& chosen) {
  Diagnosis diagnosis;
  for (const std::size_t index : chosen) {
    const NetChoice& choice = choices[index];
    if (!choice.is_right) {
      diagnosis.causes.push_back({choice.cause, "At " + choice.text + ": " + choice.message, choice.faces, false});
    }
  }
  if (!diagnosis.causes.empty()) {
    diagnosis.verdict = AnswerVerdict::Recognized;
    diagnosis.message = diagnosis.causes.front().message;
    return diagnosis;
  }
  const auto right = static_cast<std::size_t>(
      std::count_if(choices.begin(), choices.end(), [](const NetChoice& choice) { return choice.is_right; }));
  if (chosen.size() == right) {
    return {AnswerVerdict::Right, {}, right == 1 ? "Right." : "Right: these are all of them."};
  }
  const std::size_t more = right - chosen.size();
  diagnosis.verdict = AnswerVerdict::Ask;
  diagnosis.message = "That would work. " +
                      (more == 1 ? std::string("One more place") : std::to_string(more) + " more places") +
                      " would work too. Which?";
  return diagnosis;
}

}  // namespace

std::string net_question_text(const Problem& problem) {
  const std::string a_solid = reasoning::one(problem.solid.name());
  switch (task_of(problem).ask) {
    case NetAsk::Name:
      return "Which solid folds from this net?";
    case NetAsk::Choose:
      return "Which one is a net of " + a_solid + "?";
    case NetAsk::IsIt:
      return "Is this a net of " + a_solid + "?";
    case NetAsk::Complete:
      break;
  }
  return "Where can the missing piece go? Find every place.";
}

std::vector<NetChoice> net_choices(const Problem& problem, Seed seed) {
  const NetTask& task = task_of(problem);
  std::vector<NetChoice> choices;
  switch (task.ask) {
    case NetAsk::Name:
      return name_choices(problem, seed);
    case NetAsk::IsIt:
      return yes_and_no(problem);
    case NetAsk::Choose:
      for (std::size_t i = 0; i < task.sheets.size(); ++i) {
        choices.push_back(choice_of(problem, letter(i), task.sheets[i].cutout));
      }
      return choices;
    case NetAsk::Complete:
      break;
  }
  for (std::size_t i = 0; i < task.places.size(); ++i) {
    choices.push_back(choice_of(problem, letter(i), lessons::completed(task, problem.solid, i)));
  }
  return choices;
}

std::vector<NetChoice> net_reasons(const Problem& problem) {
  const NetTask& task = task_of(problem);
  const Cutout& cutout = task.sheets.front().cutout;
  const FoldTest test = test_of(problem, cutout);
  if (task.ask != NetAsk::IsIt || test.is_net()) {
    return {};
  }
  const Misfit misfit = test.finding->misfit;
  const bool is_count = misfit == Misfit::WrongCount;
  const bool is_place = misfit == Misfit::Collision || misfit == Misfit::SameSide || misfit == Misfit::Overlap;
  const bool is_height = misfit == Misfit::TooLow || misfit == Misfit::TooShort;
  const NetReason reason = net_reason(problem.solid, cutout, *test.finding);
  std::vector<NetChoice> reasons{{"It has the wrong number of pieces.",
                                  is_count,
                                  "N1",
                                  "The number of pieces would be right. Fold it in your head.",
                                  {},
                                  {},
                                  {}},
                                 {"Two pieces land on the same face.",
                                  is_place,
                                  "N2",
                                  "Each piece would have a face of its own. Compare the pieces with the faces.",
                                  {},
                                  {},
                                  {}},
                                 {"Edges that meet have different lengths.",
                                  !is_count && !is_place && !is_height,
                                  "N4",
                                  "The edges that meet would be equally long. Fold it in your head.",
                                  {},
                                  {},
                                  {}},
                                 {"Some pieces are too short to meet.",
                                  is_height,
                                  "N8",
                                  "No piece would be too short. Look at where each one lands.",
                                  {},
                                  {},
                                  {}}};
  for (NetChoice& choice : reasons) {
    if (choice.is_right) {
      tell(choice, {"", message("Right. {reason}", {{"reason", reason.message}})}, &*test.finding);
    }
  }
  return reasons;
}

Cutout cutout_for(const Problem& problem, std::size_t choice) {
  const NetTask& task = task_of(problem);
  if (task.ask == NetAsk::Complete) {
    return lessons::completed(task, problem.solid, choice);
  }
  return task.sheets[task.ask == NetAsk::Choose ? choice : 0].cutout;
}

Diagnosis judged_choices(const Problem& problem, const std::vector<std::size_t>& chosen) {
  ensure(!chosen.empty(), "an answer without a choice cannot be judged");
  const std::vector<NetChoice> choices = net_choices(problem);
  for (const std::size_t index : chosen) {
    ensure(index < choices.size(), "a choice was made that is not there");
  }
  if (task_of(problem).ask == NetAsk::Complete) {
    return judged_places(choices, chosen);
  }
  const NetChoice& choice = choices[chosen.front()];
  if (choice.is_right) {
    return {AnswerVerdict::Right, {}, choice.message};
  }
  return {AnswerVerdict::Recognized, {{choice.cause, choice.message, choice.faces, false}}, choice.message};
}

Diagnosis judged_net(const Problem& problem, std::string_view typed) {
  const NetTask& task = task_of(problem);
  if (task.ask == NetAsk::Name) {
    return judged_name(problem, typed);
  }
  if (task.ask == NetAsk::IsIt) {
    const std::optional<bool> is_yes = read_yes_no(typed);
    return is_yes ? judged_choices(problem, {*is_yes ? std::size_t{0} : std::size_t{1}})
                  : unread("Say yes or no: would it fold up?");
  }
  const std::size_t count = task.ask == NetAsk::Choose ? task.sheets.size() : task.places.size();
  const auto chosen = read_letters(typed, count);
  const bool is_one = task.ask == NetAsk::Complete || (chosen && chosen->size() == 1);
  return chosen && is_one ? judged_choices(problem, *chosen)
                          : unread("Answer with " + std::string(task.ask == NetAsk::Choose ? "one letter" : "letters") +
                                   " from A to " + letter(count - 1) + ".");
}

std::string net_answer(const Problem& problem) {
  const NetTask& task = task_of(problem);
  if (task.ask == NetAsk::Name) {
    return problem.solid.name();
  }
  std::string text;
  const std::vector<NetChoice> choices = net_choices(problem);
  for (const NetChoice& choice : choices) {
    text += choice.is_right ? (text.empty() ? "" : ", ") + choice.text : "";
  }
  // What a "yes" would show is why it is no net.
  return task.ask == NetAsk::IsIt && text == "no" ? "no (" + choices.front().cause + ")" : text;
}

std::vector<reasoning::Step> net_steps(const Problem& problem) {
  const NetAsk ask = task_of(problem).ask;
  std::vector<reasoning::Step> steps;
  const auto say = [&](const words::Message& reason, const std::vector<FaceId>& faces) {
    steps.emplace_back();
    steps.back().reason = reason;
    steps.back().faces = faces;
  };
  if (ask == NetAsk::Name) {
    say(reasoning::name_sentence(problem.solid), {});
    return steps;
  }
  const std::vector<NetChoice> choices = net_choices(problem);
  if (ask == NetAsk::IsIt) {  // what a "yes" would be told is why it is none
    const NetChoice& yes = choices.front();
    say(yes.is_right ? yes.message : "It is none. " + yes.message, {});
    return steps;
  }
  for (const NetChoice& choice : choices) {
    say(choice.text + ": " + choice.message, choice.faces);
  }
  return steps;
}

reasoning::WorkedProblem worked_net(const Problem& problem) {
  reasoning::WorkedProblem worked;
  worked.askable = reasoning::askable_measures(problem.solid);
  worked.title = "net";
  worked.solid = problem.solid;
  worked.parts = {{"", net_steps(problem), {}, {}, 0, false}};
  worked.count = worked.parts.front().steps.size();
  return worked;
}

}  // namespace fw::practice
