#include "ui/key_owner.hpp"

#include <gtest/gtest.h>

namespace fw::ui::key_owner_test {
namespace {

std::vector<Key> printable_keys() {
  std::vector<Key> keys{Key::Space, Key::Comma,  Key::Minus,       Key::Period,      Key::Slash,
                        Key::Equal, Key::PadAdd, Key::PadSubtract, Key::BracketLeft, Key::BracketRight};
  for (int key = static_cast<int>(Key::Digit0); key <= static_cast<int>(Key::Digit9); ++key) {
    keys.push_back(static_cast<Key>(key));
  }
  for (int key = static_cast<int>(Key::A); key <= static_cast<int>(Key::Z); ++key) {
    keys.push_back(static_cast<Key>(key));
  }
  return keys;
}

TEST(KeyOwner, GivesEveryPrintableKeyToTheFieldThatIsOnTheScreen) {
  for (const KeyScene scene : {KeyScene::Field, KeyScene::SheetField, KeyScene::BesideField}) {
    for (const Key key : printable_keys()) {
      for (const Modifiers modifiers : {no_modifiers, with_shift}) {
        EXPECT_TRUE(may_take(KeyTaker::Field, scene, key, modifiers)) << static_cast<int>(key);
        for (const KeyTaker other : {KeyTaker::Focused, KeyTaker::Option, KeyTaker::Command}) {
          EXPECT_FALSE(may_take(other, scene, key, modifiers)) << static_cast<int>(key);
        }
      }
    }
    EXPECT_FALSE(may_take(KeyTaker::Command, scene, Key::Enter, no_modifiers));
    EXPECT_TRUE(may_take(KeyTaker::Command, scene, Key::PageDown, no_modifiers)) << "a remote's key is no text";
  }
}

TEST(KeyOwner, LetsNothingThatOneStudentTypesBlankTheScreenOrMoveOn) {
  for (const KeyScene scene :
       {KeyScene::Choosing, KeyScene::Answered, KeyScene::BesideField, KeyScene::Field, KeyScene::SheetField}) {
    for (const Key key : {Key::B, Key::Period, Key::Space, Key::Enter, Key::Backspace, Key::Delete}) {
      EXPECT_FALSE(may_take(KeyTaker::Command, scene, key, no_modifiers)) << static_cast<int>(key);
    }
  }
}

TEST(KeyOwner, TakesLettersForOptionsOnlyWhereOptionsAreShown) {
  for (const KeyScene scene : {KeyScene::Program, KeyScene::Blank, KeyScene::Answered, KeyScene::Sheet,
                               KeyScene::BesideField, KeyScene::Field, KeyScene::SheetField}) {
    EXPECT_FALSE(may_take(KeyTaker::Option, scene, Key::A, no_modifiers));
    EXPECT_FALSE(may_take(KeyTaker::Option, scene, Key::B, no_modifiers));
  }
  for (const KeyScene scene : {KeyScene::Options, KeyScene::Choosing}) {
    EXPECT_TRUE(may_take(KeyTaker::Option, scene, Key::A, no_modifiers));
    EXPECT_TRUE(may_take(KeyTaker::Option, scene, Key::B, no_modifiers));
  }
}

TEST(KeyOwner, LeavesCopyAndPasteToTheFieldAndUndoToItTooWhileItIsTypedIn) {
  EXPECT_TRUE(may_take(KeyTaker::Field, KeyScene::Field, Key::V, with_control));
  EXPECT_FALSE(may_take(KeyTaker::Command, KeyScene::Field, Key::Z, with_control));
  EXPECT_TRUE(may_take(KeyTaker::Command, KeyScene::BesideField, Key::Z, with_control));
  EXPECT_TRUE(may_take(KeyTaker::Command, KeyScene::Field, Key::Y, with_control));
}

// B and the full stop blank the screen; else nobody should have to learn which letter or digit is special.
TEST(KeyOwner, TreatsAllLettersAlikeAndAllDigits) {
  for (int scene = 0; scene <= static_cast<int>(KeyScene::SheetField); ++scene) {
    for (const KeyTaker taker : {KeyTaker::Field, KeyTaker::Focused, KeyTaker::Option, KeyTaker::Command}) {
      const auto takes = [&](Key key) { return may_take(taker, static_cast<KeyScene>(scene), key, no_modifiers); };
      for (int key = static_cast<int>(Key::A); key <= static_cast<int>(Key::Z); ++key) {
        if (static_cast<Key>(key) != Key::B) {
          EXPECT_EQ(takes(static_cast<Key>(key)), takes(Key::M)) << key;
        }
      }
      for (int key = static_cast<int>(Key::Digit0); key <= static_cast<int>(Key::Digit9); ++key) {
        EXPECT_EQ(takes(static_cast<Key>(key)), takes(Key::Digit5)) << key;
      }
      EXPECT_EQ(takes(Key::B), takes(Key::Period));
      EXPECT_EQ(takes(Key::Enter), takes(Key::PadEnter));
      for (const Key key : {Key::Left, Key::Right, Key::Up, Key::Down, Key::End}) {
        EXPECT_EQ(takes(key), takes(Key::Home)) << static_cast<int>(key);
      }
      EXPECT_EQ(takes(Key::Backspace), takes(Key::Delete));
      for (const Key key : {Key::PadAdd, Key::PadSubtract, Key::Minus, Key::Equal, Key::Slash, Key::Comma}) {
        EXPECT_EQ(takes(key), takes(Key::BracketLeft)) << static_cast<int>(key);
      }
    }
  }
  EXPECT_EQ(kind_of(Key::A), KeyKind::Letter);
  EXPECT_EQ(kind_of(Key::Z), KeyKind::Letter);
  EXPECT_EQ(kind_of(Key::Digit0), KeyKind::Digit);
  EXPECT_EQ(kind_of(Key::Digit9), KeyKind::Digit);
}

TEST(KeyOwner, LetsNoChordThroughASheet) {
  for (const KeyScene scene : {KeyScene::Sheet, KeyScene::SheetField}) {
    for (const Key key : {Key::Y, Key::Z, Key::P, Key::Digit1}) {
      EXPECT_FALSE(may_take(KeyTaker::Command, scene, key, with_control)) << static_cast<int>(key);
    }
  }
  EXPECT_TRUE(may_take(KeyTaker::Field, KeyScene::SheetField, Key::V, with_control));
}

}  // namespace
}  // namespace fw::ui::key_owner_test
