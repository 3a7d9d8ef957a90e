#pragma once

#include <functional>
#include <memory>

namespace fw::platform {

/// While it lives, a polite request to end (SIGTERM, SIGHUP, SIGINT) calls `hook` in a thread of its own, once; the
/// program then ends by itself, and a second request ends it at once. Make it before any other thread, so that every
/// thread leaves these signals to it. One at a time.
class EndRequests {
 public:
  explicit EndRequests(std::function<void()> hook);
  EndRequests(const EndRequests&) = delete;
  EndRequests& operator=(const EndRequests&) = delete;
  ~EndRequests();

 private:
  struct Listener;
  std::unique_ptr<Listener> listener_;
};

}  // namespace fw::platform
