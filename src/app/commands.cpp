#include "app/commands.hpp"

#include <tuple>

namespace fw::app {

Commands::Commands() = default;
Commands::Commands(std::initializer_list<Command> commands) : list_(commands) {}
Commands::Commands(const Commands&) = default;
Commands::Commands(Commands&&) noexcept = default;
Commands& Commands::operator=(const Commands&) = default;
Commands& Commands::operator=(Commands&&) noexcept = default;
Commands::~Commands() = default;

template <class Intent>
void Commands::push_back(Intent intent) {
  list_.emplace_back(std::move(intent));
}

template void Commands::push_back(Command);

namespace {

template <class... Intent>
constexpr auto pushes_of(const std::variant<Intent...>*) {
  return std::make_tuple(static_cast<void (Commands::*)(Intent)>(&Commands::push_back<Intent>)...);
}

}  // namespace

// Names every push_back there is, so that all of them are compiled here; nothing reads it.
extern const decltype(pushes_of(static_cast<const Command*>(nullptr))) every_push_back;
const decltype(pushes_of(static_cast<const Command*>(nullptr))) every_push_back =
    pushes_of(static_cast<const Command*>(nullptr));

}  // namespace fw::app
