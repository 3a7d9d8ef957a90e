#include "platform/ending.hpp"

#include <csignal>
#include <thread>
#include <utility>

namespace fw::platform {
namespace {

sigset_t requests() {
  sigset_t set;
  sigemptyset(&set);
  for (const int signal : {SIGTERM, SIGHUP, SIGINT, SIGUSR2}) {
    sigaddset(&set, signal);  // the last one is ours, to stop listening
  }
  return set;
}

}  // namespace

struct EndRequests::Listener {
  std::function<void()> hook;
  sigset_t before{};
  std::thread thread;

  void listen() {
    const sigset_t set = requests();
    int signal = 0;
    if (sigwait(&set, &signal) != 0 || signal == SIGUSR2) {
      return;
    }
    hook();
    if (sigwait(&set, &signal) == 0 && signal != SIGUSR2) {
      std::signal(signal, SIG_DFL);
      pthread_sigmask(SIG_UNBLOCK, &set, nullptr);
      std::raise(signal);
    }
  }
};

EndRequests::EndRequests(std::function<void()> hook) : listener_(std::make_unique<Listener>()) {
  listener_->hook = std::move(hook);
  const sigset_t set = requests();
  pthread_sigmask(SIG_BLOCK, &set, &listener_->before);
  listener_->thread = std::thread([this] { listener_->listen(); });
}

EndRequests::~EndRequests() {
  pthread_kill(listener_->thread.native_handle(), SIGUSR2);
  listener_->thread.join();
  pthread_sigmask(SIG_SETMASK, &listener_->before, nullptr);
}

}  // namespace fw::platform
