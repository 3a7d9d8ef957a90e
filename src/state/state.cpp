#include "state/state.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "lessons/open_faces.hpp"
#include "solids/body/body_nets.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::state {
namespace {

constexpr std::size_t nets_listed = 400;

}  // namespace

reasoning::Grouping usual_grouping(const solids::Solid& solid) {
  constexpr std::size_t most_by_itself = 6;  // so that a box is counted face by face
  return solid.faces().size() > most_by_itself ? reasoning::Grouping::AlikeTogether : reasoning::Grouping::EachFace;
}

Desk fresh_desk(solids::Solid solid) {
  nets::HingeTree net = solid.classic_net();
  const reasoning::Grouping grouping = usual_grouping(solid);
  return {std::move(solid), std::move(net), {}, grouping, false, false, {}, {}};
}

namespace {

/// The net that the problem shows, and otherwise the usual one.
nets::HingeTree first_net(const lessons::Problem& problem) {
  if (!shows_net_alone(problem)) {
    return problem.solid.classic_net();
  }
  const solids::Body& body = problem.solid.body();
  const nets::Cutout& cutout = tasks::net_asked(problem)->sheets().front().cutout;
  const nets::FoldTest test = solids::fold_test(body, cutout);
  return test.is_net() ? solids::tree_of(body, cutout, test) : problem.solid.classic_net();
}

}  // namespace

Desk fresh_desk(const lessons::Problem& problem) {
  Desk desk = fresh_desk(problem.solid);
  desk.net = first_net(problem);
  return desk;
}

State opened(lessons::Lesson lesson, std::string path) {
  ensure(!lesson.problems.empty(), "a lesson without a problem was opened");
  State state;
  state.lesson = std::make_shared<const lessons::Lesson>(std::move(lesson));
  state.lesson_path = std::move(path);
  state.desks.resize(state.lesson->problems.size());
  state.desks.front() = fresh_desk(state.lesson->problems.front());
  return state;
}

std::vector<FaceId> open_on_desk(const State& state) { return open_on_desk(state.current(), state.desk()); }

bool is_of_problem(const lessons::Problem& problem, const Desk& desk) {
  const solids::Solid& solid = desk.solid;
  return solid.description().kind == problem.description.kind && solid.faces().size() == problem.solid.faces().size();
}

std::vector<FaceId> open_on_desk(const lessons::Problem& problem, const Desk& desk) {
  return is_of_problem(problem, desk) ? lessons::open_faces(problem) : std::vector<FaceId>{};
}

std::optional<FaceId> next_to_count(const State& state) {
  const Desk& desk = state.desk();
  const std::vector<FaceId> open = open_on_desk(state);
  const auto is_among = [](const std::vector<FaceId>& faces, FaceId face) {
    return std::find(faces.begin(), faces.end(), face) != faces.end();
  };
  const auto& faces = desk.solid.faces();
  const auto next = std::find_if(faces.begin(), faces.end(), [&](const solids::Face& face) {
    return !is_among(open, face.id) && !is_among(desk.counted, face.id);
  });
  return next == faces.end() ? std::nullopt : std::optional(next->id);
}

ItemEnd end_of(const ItemWork& work) {
  const bool is_found = !work.replies.empty() && work.replies.back().verdict == practice::AnswerVerdict::Right;
  if (!work.done && !work.is_counted) {
    return ItemEnd::Skipped;
  }
  if (!is_found) {
    return ItemEnd::Missed;
  }
  const bool is_at_once =
      work.hints == 0 && work.retries == 0 &&
      std::none_of(work.replies.begin(), work.replies.end(), [](const Reply& reply) { return reply.is_try; });
  return is_at_once ? ItemEnd::Right : ItemEnd::WithHelp;
}

bool asks_from_net(const State& state) {
  return state.in_item() && answer_form(state.quiz.item()) == AnswerForm::NetName;
}

bool shows_net_alone(const lessons::Problem& problem) {
  const tasks::NetTask* net = tasks::net_asked(problem);
  return net != nullptr && !net->shows_solid();
}

bool begins_flat(const State& state) { return state.in_item() && is_flat(answer_form(state.quiz.item())); }

bool shows_cutouts(const State& state) {
  const bool asks_about_net = tasks::net_asked(state.current()) != nullptr;
  if (!asks_about_net || state.in_item()) {
    return asks_about_net;
  }
  const Desk& desk = state.desk();
  if (!(desk.solid == state.current().solid)) {
    return false;
  }
  // In Explore they lie there until somebody looks into the solid.
  const bool is_untouched = desk.counted.empty() && !desk.picked && !desk.total_shown && !desk.volume_shown &&
                            desk.net == first_net(state.current());
  return state.mode == Mode::Work ? desk.work.asked.empty() : state.mode == Mode::Explore && is_untouched;
}

bool lies_flat(const State& state) {
  if (state.in_item()) {
    return begins_flat(state) && state.is_asking();
  }
  if (shows_cutouts(state)) {
    return true;
  }
  return state.desk().net_seen != NetSeen::FoldedUp && shows_net_alone(state.current());
}

practice::NetQuestion question(const State& state) {
  return net_question_of(state.quiz.item(), state.quiz.setup.seed, state.quiz.number);
}

NetChoice net_choice(const Desk& desk) {
  const solids::Body& body = desk.solid.body();
  const nets::HingeTree& classic = desk.solid.classic_net();
  NetChoice choice;
  if (!solids::can_list_nets(body)) {
    choice.nets = std::make_shared<const std::vector<nets::HingeTree>>(1, classic);
    choice.complete = !solids::has_other_nets(body);
    choice.current = desk.net == classic ? std::optional<std::size_t>(0) : std::nullopt;
    return choice;
  }
  nets::NetList list = solids::distinct_nets(body, classic.root(), nets_listed);
  const std::uint64_t classic_class = solids::net_class(body, classic);
  const std::uint64_t current_class = solids::net_class(body, desk.net);
  // The usual net comes first; the others keep their order.
  std::vector<nets::HingeTree> ordered{classic};
  for (nets::HingeTree& net : list.nets) {
    if (solids::net_class(body, net) != classic_class) {
      ordered.push_back(std::move(net));
    }
  }
  for (std::size_t i = 0; i < ordered.size() && !choice.current; ++i) {
    if (solids::net_class(body, ordered[i]) == current_class) {
      choice.current = i;
    }
  }
  choice.complete = list.complete;
  choice.nets = std::make_shared<const std::vector<nets::HingeTree>>(std::move(ordered));
  return choice;
}

}  // namespace fw::state
