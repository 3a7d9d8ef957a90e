#pragma once

#include <memory>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace fw::lessons {

/// Members of a JSON object, their values as JSON text.
using Members = std::vector<std::pair<std::string, std::string>>;

/// What is asked, as a type of question states it. Which types there are is known in rooms above; here it is only kept
/// and written down.
class Asking {
 public:
  virtual ~Asking() = default;
  /// How results name it: "surface_area", "name", "count", "claim", "net".
  [[nodiscard]] virtual std::string key() const = 0;
  /// Its entry in the list "find" of the problem; empty where it has none.
  [[nodiscard]] virtual std::string find() const { return {}; }
  /// Whether its answer is rounded as the problem says.
  [[nodiscard]] virtual bool is_rounded() const { return false; }
  /// Adds the members of the problem that say all else about it.
  virtual void write(Members& members) const;

 protected:
  Asking() = default;
  Asking(const Asking&) = default;
  Asking(Asking&&) = default;
  Asking& operator=(const Asking&) = default;
  Asking& operator=(Asking&&) = default;
};

/// One thing that a problem asks for: an immutable value of any type of question.
class Task {
 public:
  template <class T, class = std::enable_if_t<std::is_base_of_v<Asking, T>>>
  // NOLINTNEXTLINE(google-explicit-constructor): a task is what it holds
  Task(T asking) : asking_(std::make_shared<const T>(std::move(asking))) {}

  const Asking& operator*() const { return *asking_; }
  const Asking* operator->() const { return asking_.get(); }
  /// What it holds, where that is a T; else null.
  template <class T>
  [[nodiscard]] const T* as() const {
    return dynamic_cast<const T*>(asking_.get());
  }
  /// Equal are those that a lesson writes in the same way.
  friend bool operator==(const Task& a, const Task& b);

 private:
  std::shared_ptr<const Asking> asking_;
};

}  // namespace fw::lessons
