#include "state/apply/handlers.hpp"

// The way back and forth is no step of its own.
namespace fw::state::handlers {

std::string on(Model& model, const Undo&) {
  if (model.history.can_undo()) {
    model.state = model.history.undo(model.state);
    model.view.notice.reset();
  }
  return {};
}

std::string on(Model& model, const Redo&) {
  if (model.history.can_redo()) {
    model.state = model.history.redo(model.state);
    model.view.notice.reset();
  }
  return {};
}

}  // namespace fw::state::handlers
