#include "state/command.hpp"

#include <tuple>

#include "state/apply/handlers.hpp"

namespace fw::state {

template <class Intent>
struct Command::Holding : Held {
  explicit Holding(const Intent& held) : held_intent(held) {}
  [[nodiscard]] const void* kind() const override { return &kind_of<Intent>; }
  [[nodiscard]] const void* intent() const override { return &held_intent; }
  std::string change(Model& model) const override { return handlers::on(model, held_intent); }
  Intent held_intent;
};

template <class Intent>
std::shared_ptr<const Command::Held> Command::held(const Intent& intent) {
  return std::make_shared<Holding<Intent>>(intent);
}

/// Names held() for every intent, so that all of them are compiled here; nothing reads it.
struct EveryIntent {
  template <class... Intent>
  static constexpr auto all_held(IntentList<Intent...>) {
    return std::make_tuple(&Command::held<Intent>...);
  }
};
extern const decltype(EveryIntent::all_held(Intents{})) every_intent;
const decltype(EveryIntent::all_held(Intents{})) every_intent = EveryIntent::all_held(Intents{});

}  // namespace fw::state
