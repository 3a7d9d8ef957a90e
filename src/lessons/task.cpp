#include "lessons/task.hpp"

namespace fw::lessons {

void Asking::write(Members&) const {}

bool operator==(const Task& a, const Task& b) {
  if (a.asking_ == b.asking_) {
    return true;
  }
  Members of_a, of_b;
  a->write(of_a);
  b->write(of_b);
  return a->key() == b->key() && a->find() == b->find() && of_a == of_b;
}

}  // namespace fw::lessons
