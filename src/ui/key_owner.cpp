#include "ui/key_owner.hpp"

#include <array>
#include <cstddef>

namespace fw::ui {
namespace {

constexpr unsigned field = 1, focused = 2, option = 4, command = 8, nobody = 0;
constexpr unsigned any = focused | command;

struct SceneRow {
  KeyScene scene;
  // In the order of KeyKind: letter, B and period, digit, sign, space, Enter, moving, erasing, other.
  std::array<unsigned, 9> takers;
};
constexpr std::array<SceneRow, 9> owners{{
    {KeyScene::Program, {command, command, command, command, any, any, any, any, command}},
    {KeyScene::Blank, {command, command, command, command, command, command, command, command, command}},
    {KeyScene::Options, {option, option | command, command, command, any, any, any, any, command}},
    {KeyScene::Choosing, {option, option, command, command, focused, focused, any, nobody, command}},
    {KeyScene::Answered, {command, nobody, command, command, nobody, focused, any, nobody, command}},
    {KeyScene::Sheet, {nobody, nobody, nobody, nobody, focused, focused, focused, nobody, command}},
    {KeyScene::BesideField, {field, field, field, field, field, focused, focused, field, command}},
    {KeyScene::Field, {field, field, field, field, field, field, field, field, command}},
    {KeyScene::SheetField, {field, field, field, field, field, field, field, field, command}},
}};

constexpr bool is_in_order() {
  for (std::size_t i = 0; i < owners.size(); ++i) {
    if (static_cast<std::size_t>(owners[i].scene) != i) return false;
  }
  return true;
}
static_assert(is_in_order(), "a row of the table is found by its number");

/// With Ctrl or Alt a key is a command, but for those that edit the text of a field.
unsigned takers_of_chord(KeyScene scene, Key key, Modifiers modifiers) {
  const bool edits =
      !modifiers.alt && (key == Key::A || key == Key::C || key == Key::X || key == Key::V || key == Key::Z);
  const bool in_field = scene == KeyScene::Field || scene == KeyScene::SheetField;
  if (in_field && edits) return field;
  return scene == KeyScene::Sheet || scene == KeyScene::SheetField ? nobody : command;
}

unsigned bit_of(KeyTaker taker) {
  switch (taker) {
    case KeyTaker::Field:
      return field;
    case KeyTaker::Focused:
      return focused;
    case KeyTaker::Option:
      return option;
    case KeyTaker::Command:
      return command;
  }
  return nobody;
}

}  // namespace

KeyKind kind_of(Key key) {
  switch (key) {
    case Key::B:
    case Key::Period:
      return KeyKind::Blanking;
    case Key::Space:
      return KeyKind::Space;
    case Key::Enter:
    case Key::PadEnter:
      return KeyKind::Enter;
    case Key::Left:
    case Key::Right:
    case Key::Up:
    case Key::Down:
    case Key::Home:
    case Key::End:
      return KeyKind::Moving;
    case Key::Backspace:
    case Key::Delete:
      return KeyKind::Erasing;
    case Key::PadAdd:
    case Key::PadSubtract:
      return KeyKind::Sign;
    default:
      break;
  }
  if (key >= Key::A && key <= Key::Z) return KeyKind::Letter;
  if (key >= Key::Digit0 && key <= Key::Digit9) return KeyKind::Digit;
  return key < Key::Escape ? KeyKind::Sign : KeyKind::Other;
}

bool may_take(KeyTaker taker, KeyScene scene, Key key, Modifiers modifiers) {
  const bool is_chord = modifiers.control || modifiers.alt;
  const unsigned takers = is_chord
                              ? takers_of_chord(scene, key, modifiers)
                              : owners[static_cast<std::size_t>(scene)].takers[static_cast<std::size_t>(kind_of(key))];
  return (takers & bit_of(taker)) != 0;
}

}  // namespace fw::ui
