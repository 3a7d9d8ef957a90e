#include "reasoning/nouns.hpp"

#include "words/message.hpp"

namespace fw::reasoning {

using words::message;
using words::Noun;

std::string plural(const std::string& noun) { return said(message("{noun:s}", {{"noun", Noun{noun}}})); }

std::string counted(const std::string& number, const std::string& noun) {
  return said(message("{count} {noun#count}", {{"count", number}, {"noun", Noun{noun}}}));
}

std::string one(const std::string& noun) { return said(message("{noun:a}", {{"noun", Noun{noun}}})); }

std::string sentence_case(const std::string& text) { return said(message("{text:up}", {{"text", text}})); }

}  // namespace fw::reasoning
