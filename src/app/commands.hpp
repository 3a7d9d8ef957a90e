#pragma once

#include <initializer_list>
#include <vector>

#include "app/command.hpp"

namespace fw::app {

/// What the user wants, in order. A class and no bare vector, so that the many panels that push a command need not
/// each compile what a variant of all commands is made of: that is done once, in commands.cpp.
class Commands {
 public:
  Commands();
  Commands(std::initializer_list<Command> commands);
  Commands(const Commands&);
  Commands(Commands&&) noexcept;
  Commands& operator=(const Commands&);
  Commands& operator=(Commands&&) noexcept;
  ~Commands();

  /// Any alternative of Command, or a Command.
  template <class Intent>
  void push_back(Intent intent);
  [[nodiscard]] const std::vector<Command>& list() const { return list_; }

 private:
  std::vector<Command> list_;
};

}  // namespace fw::app
