#pragma once

#include <string>

#include "platform/files.hpp"
#include "state/apply.hpp"
#include "state/command.hpp"

namespace fw::state {

/// Bytes of a page at most.
inline constexpr std::size_t page_byte_limit = std::size_t{32} << 20U;

/// Saves the lesson that is open as a page for a browser, whole or not at all, in the folder that pages are saved in.
/// `page_file`: the page without a lesson. Replaces such a page of before, and no other file.
[[nodiscard]] TakeSaved saved_as_page(platform::Files& files, const Model& model, const std::string& page_file);

}  // namespace fw::state
