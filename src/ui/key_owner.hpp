#pragma once

#include "ui/keys.hpp"

// Who gets a key: one table and one function, which widgets and shortcuts both ask.
namespace fw::ui {

/// What the screen does with keys.
enum class KeyScene {
  Program,      ///< keys are commands, after the widget that has the focus
  Blank,        ///< the screen is blanked
  Options,      ///< letters are the options of a class
  Choosing,     ///< letters are the options of one student
  Answered,     ///< one student's answer is out: what is still typed goes nowhere
  Sheet,        ///< a sheet lies over everything
  BesideField,  ///< an answer field is on the screen, and Tab has led away from it
  Field,        ///< a text field has the focus
  SheetField,   ///< the same on a sheet that lies over everything
};

enum class KeyKind {
  Letter,
  Blanking,  ///< B and the period: they blank the screen where they are free
  Digit,
  Sign,  ///< plus, minus and the other signs
  Space,
  Enter,
  Moving,   ///< arrows, Home and End
  Erasing,  ///< Backspace and Delete
  Other,    ///< what is never text: PgUp, PgDn, Esc, F1 to F12
};
[[nodiscard]] KeyKind kind_of(Key key);

enum class KeyTaker {
  Field,    ///< the text that is typed
  Focused,  ///< a button, tab or slider with the focus
  Option,   ///< an option of a question
  Command
};

/// Whether this taker may have the key. Where several may, widgets come before options, and these before commands.
[[nodiscard]] bool may_take(KeyTaker taker, KeyScene scene, Key key, Modifiers modifiers);

}  // namespace fw::ui
