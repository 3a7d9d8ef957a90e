#pragma once

#include <optional>

#include "lessons/lesson.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {

/// The question about nets at the node of a problem's key "net": its pieces there, its cut-outs in one piece and free
/// of overlap, and with an answer.
/// Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<NetTask> read_net(const JsonNode& node, const solids::Solid& solid, const Context& context);

/// Whether nothing else is asked by the problem beside its key "net"; `node` is the whole problem.
void check_alone(const JsonNode& node, const Context& context);

}  // namespace fw::lessons
