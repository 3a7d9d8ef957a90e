#pragma once

#include <iosfwd>
#include <streambuf>

namespace fw::cli {

/// While it lives, a stream lets no control character through but line ends and tabs: a title or a prompt of a lesson
/// from elsewhere cannot steer the terminal that it is printed on. The text is UTF-8; bytes C2 80 to C2 9F are control
/// characters too. Source: ECMA-48, control functions of the C0 and C1 sets.
class PlainText final : public std::streambuf {
 public:
  explicit PlainText(std::ostream& stream);
  PlainText(const PlainText&) = delete;
  PlainText& operator=(const PlainText&) = delete;
  ~PlainText() override;

 protected:
  int_type overflow(int_type c) override;
  int sync() override;

 private:
  [[nodiscard]] bool put(char c);

  std::ostream& stream_;
  std::streambuf* below_;
  bool after_c2_ = false;  ///< the byte C2 came and waits for what it begins
};

}  // namespace fw::cli
