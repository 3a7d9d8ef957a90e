#include <algorithm>
#include <cmath>

#include "reasoning/phrases.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/body/standing.hpp"
#include "state/apply/handlers.hpp"

namespace fw::state::handlers {
namespace {

using words::message;

/// Why a face stays where it is.
std::string cannot_move(const Desk& place) {
  return solids::has_other_nets(place.solid.body())
             ? "This face can't move: the others are attached to it."
             : "A curved side always rolls out the same way, so this net can't change.";
}
constexpr double seconds_a_hinge = 0.6;
constexpr double seconds_together = 1.8;  // slow enough to be followed from the back of a room

/// How many times as fast as usual.
double times_usual(PlaySpeed speed) {
  switch (speed) {
    case PlaySpeed::Slow:
      return 0.4;
    case PlaySpeed::Usual:
      return 1;
    case PlaySpeed::Fast:
      return 2.5;
  }
  return 1;
}

/// The speed at a place of a movement that takes one second: slow at both ends, quick between.
double eased_speed(double place) {
  // The integral of 1 / (1 - 3 (x - 1/2)^2) over 0..1.
  constexpr double whole_time = 1.5206519;
  const double u = place - 0.5;
  return whole_time * (1.0 - 3.0 * u * u);
}

/// The edges that a face can hang on, but for the one that it hangs on now.
std::vector<EdgeId> other_hinges(const Desk& place, FaceId face) {
  std::vector<EdgeId> edges = solids::possible_hinges(place.solid.body(), place.net, face);
  if (const auto link = place.net.link(face)) {
    edges.erase(std::remove(edges.begin(), edges.end(), link->hinge), edges.end());
  }
  return edges;
}

std::size_t hinge_count(const Model& model) {
  if (asks_from_net(model.state)) {
    const practice::NetQuestion asked = question(model.state);
    return solids::fold_steps(asked.body, asked.net);
  }
  return solids::fold_steps(model.state.desk().solid.body(), model.state.desk().net);
}

/// Card folds along all its hinges at once.
bool folds_together(const Model& model) {
  return model.view.order == nets::FoldOrder::Together || shows_cutouts(model.state);
}

/// Neither opening a solid nor closing a net may give an answer away.
bool net_is_hidden(const Model& model) { return model.state.is_asking(); }

}  // namespace

std::size_t fold_steps(const Model& model) { return folds_together(model) ? 4 : hinge_count(model); }

double stepped_fold(double fold, int by, std::size_t steps) {
  const double count = static_cast<double>(steps);
  constexpr double slack = 1e-6;
  const double place = fold * count;
  const double next = by > 0 ? std::floor(place + slack) + by : std::ceil(place - slack) + by;
  return std::clamp(next / count, 0.0, 1.0);
}

std::string on(Model& model, const SetFold& command) {
  if (!net_is_hidden(model)) {
    model.view.fold = std::clamp(command.amount, 0.0, 1.0);
    model.view.motion = Motion::Still;
  }
  return {};
}

std::string on(Model& model, const StepFold& command) {
  if (!net_is_hidden(model)) {
    model.view.fold = stepped_fold(model.view.fold, command.by, fold_steps(model));
    model.view.motion = Motion::Still;
  }
  return {};
}

std::string on(Model& model, const PlayFold& command) {
  if (net_is_hidden(model)) {
    return {};
  }
  if (model.view.settings.reduced_motion && command.motion != Motion::Still) {
    return on(model, StepFold{command.motion == Motion::Opening ? 1 : -1});
  }
  const double end = command.motion == Motion::Opening ? 1.0 : 0.0;
  model.view.motion = model.view.fold == end ? Motion::Still : command.motion;
  return {};
}

std::string on(Model& model, const SetFoldOrder& command) {
  model.view.order = command.order;
  model.view.motion = Motion::Still;
  return {};
}

std::string on(Model& model, const Tick& command) {
  View& view = model.view;
  if (view.motion == Motion::Still || view.blank) {
    return {};
  }
  const double hinges = static_cast<double>(hinge_count(model));
  const bool together = folds_together(model);
  const double place = together ? view.fold : view.fold * hinges - std::floor(view.fold * hinges);
  const double whole = together ? seconds_together : seconds_a_hinge * hinges;
  const double step = eased_speed(place) * command.seconds * times_usual(view.settings.speed) / whole;
  view.fold += view.motion == Motion::Opening ? step : -step;
  if (view.fold >= 1.0 || view.fold <= 0.0) {
    view.fold = std::clamp(view.fold, 0.0, 1.0);
    view.motion = Motion::Still;
  }
  return {};
}

std::string on(Model& model, const StepNet& command) {
  Desk& place = desk(model);
  const NetChoice choice = net_choice(place);
  const auto count = static_cast<std::ptrdiff_t>(choice.nets->size());
  std::ptrdiff_t next = 0;
  if (choice.current) {
    next = (static_cast<std::ptrdiff_t>(*choice.current) + command.by % count + count) % count;
  }
  place.net = (*choice.nets)[static_cast<std::size_t>(next)];
  return command.by > 0 ? "show the next net" : "show the net before";
}

std::string on(Model& model, const MoveFace& command) {
  Desk& place = desk(model);
  model.view.dragged.reset();
  if (!exists(place, command.face) || command.edge.index() >= place.solid.body().edge_count()) {
    return {};
  }
  auto net = solids::moved(place.solid.body(), place.net, command.face, command.edge);
  if (!net) {
    model.view.notice = Notice{net.error()};
    return {};
  }
  model.view.notice.reset();
  place.net = std::move(net).value();
  return "move face " + std::to_string(command.face.index() + 1);
}

std::string on(Model& model, const MovePicked&) {
  const Desk& place = model.state.desk();
  if (!place.picked) {
    model.view.notice = Notice{"Lift out a face first. Then H moves it to another edge."};
    return {};
  }
  const FaceId face = *place.picked;
  const std::vector<EdgeId> edges = solids::possible_hinges(place.solid.body(), place.net, face);
  if (edges.empty()) {
    model.view.notice = Notice{cannot_move(place)};
    return {};
  }
  // The next side round the face after the one it hangs on now, so that pressing again goes all the way round.
  const auto& sides = place.solid.body().edges_of(face);
  const auto& link = place.net.link(face);
  std::size_t start = 0;
  if (link) {
    start = static_cast<std::size_t>(std::find(sides.begin(), sides.end(), link->hinge) - sides.begin());
  }
  for (std::size_t step = 1; step <= sides.size(); ++step) {
    const EdgeId side = sides[(start + step) % sides.size()];
    if (std::find(edges.begin(), edges.end(), side) != edges.end()) {
      return on(model, MoveFace{face, side});
    }
  }
  return {};
}

std::string on(Model& model, const DragFace& command) {
  const Desk& place = desk(model);
  if (command.face && !exists(place, *command.face)) {
    return {};
  }
  const std::optional<FaceId> let_go = command.missed ? model.view.dragged : std::nullopt;
  model.view.dragged = command.face;
  if (command.face && other_hinges(place, *command.face).empty()) {
    model.view.dragged.reset();
    model.view.notice = Notice{cannot_move(place)};
  } else if (let_go) {
    std::vector<FaceId> beside;
    for (const EdgeId edge : other_hinges(place, *let_go)) {
      beside.push_back(place.solid.body().across(edge, *let_go));
    }
    model.view.notice = Notice{words::said(
        message("Face {face} can hang on face {faces:or}. Let go over one of the dashed outlines.",
                {{"face", reasoning::face_numbers({*let_go}).front()}, {"faces", reasoning::face_numbers(beside)}}))};
  }
  return {};
}

}  // namespace fw::state::handlers
