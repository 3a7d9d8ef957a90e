#include <gtest/gtest.h>

#include <csignal>
#include <cstdio>

// A broken invariant ends the whole run: the test that met it is named, which a brief run would not tell.
namespace {

extern "C" void name_aborted_test(int) {
  const testing::TestInfo* test = testing::UnitTest::GetInstance()->current_test_info();
  if (test != nullptr) {
    std::fprintf(stderr, "aborted in the test %s.%s\n", test->test_suite_name(), test->name());
  }
}

[[maybe_unused]] const auto before = std::signal(SIGABRT, name_aborted_test);

}  // namespace
