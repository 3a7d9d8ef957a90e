#include "cli/plain_text.hpp"

#include <ostream>

namespace fw::cli {
namespace {

constexpr unsigned char c1_lead = 0xC2;

bool is_control(unsigned char c) { return (c < 0x20 && c != '\n' && c != '\t') || c == 0x7F; }
bool ends_c1(unsigned char c) { return c >= 0x80 && c <= 0x9F; }

}  // namespace

PlainText::PlainText(std::ostream& stream) : stream_(stream), below_(stream.rdbuf(this)) {}

PlainText::~PlainText() {
  if (after_c2_) {
    below_->sputc(static_cast<char>(c1_lead));
  }
  stream_.rdbuf(below_);
}

bool PlainText::put(char c) { return below_->sputc(c) != traits_type::eof(); }

PlainText::int_type PlainText::overflow(int_type c) {
  if (traits_type::eq_int_type(c, traits_type::eof())) {
    return traits_type::not_eof(c);
  }
  const auto byte = static_cast<unsigned char>(c);
  const bool was_lead = after_c2_;
  after_c2_ = byte == c1_lead;
  if (was_lead && ends_c1(byte)) {
    return c;
  }
  const bool went =
      (!was_lead || put(static_cast<char>(c1_lead))) && (after_c2_ || is_control(byte) || put(static_cast<char>(byte)));
  return went ? c : traits_type::eof();
}

int PlainText::sync() { return below_->pubsync(); }

}  // namespace fw::cli
