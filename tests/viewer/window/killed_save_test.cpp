#include <sys/ptrace.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QFile>
#include <catch2/catch.hpp>
#include <csignal>

#include "tests/viewer/window/opened_window.h"

using namespace scalpmark;
using namespace scalpmark::window;

namespace {

/// Runs `work` in a child and kills it with SIGKILL at its `moment`th entry to or return from a system call.
/// Whether it got that far; false when it was done before.
bool killed_at(int moment, const std::function<void()>& work) {
  const pid_t child = fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    ::ptrace(PTRACE_TRACEME, 0, nullptr, nullptr);
    ::raise(SIGSTOP);
    try {
      work();
    } catch (...) {
      ::_exit(1);  // this process must not go on as a second run of the tests
    }
    ::_exit(0);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  REQUIRE(WIFSTOPPED(status));
  for (int i = 0; i < moment; ++i) {
    REQUIRE(::ptrace(PTRACE_SYSCALL, child, nullptr, nullptr) == 0);
    REQUIRE(::waitpid(child, &status, 0) == child);
    if (WIFEXITED(status)) {
      CHECK(WEXITSTATUS(status) == 0);
      return false;
    }
  }
  ::kill(child, SIGKILL);
  REQUIRE(::waitpid(child, &status, 0) == child);
  return true;
}

}  // namespace

TEST_CASE("killed at any system call of a save, the case is the old or the new one, and no work is lost") {
  OpenedWindow opened;
  Session& session = opened.window.session();
  const QString file = opened.folder.filePath("kept.json");
  REQUIRE(session.save(file).isEmpty());
  QFile old_file(file);
  REQUIRE(old_file.open(QIODevice::ReadOnly));
  const QByteArray old_bytes = old_file.readAll();
  old_file.close();
  REQUIRE(
      session.change("Label", [](models::CaseFile& case_file) { case_file.the_case.label = "Hours of work"; })
          .isEmpty());
  const QDir copies(Recovery::usual_folder());
  const auto copies_left = [&] { return copies.entryList({"*.json"}, QDir::Files).size(); };

  int moments = 0, old_ones = 0, new_ones = 0;
  for (;; ++moments) {
    REQUIRE(moments < 2000);
    session.keep_recovery_copy();
    const int with_copy = copies_left();
    REQUIRE(with_copy > 0);
    const bool killed = killed_at(moments, [&] {
      session.blockSignals(true);  // the child has no screen
      if (!session.save(file).isEmpty()) ::_exit(2);
    });
    INFO("moment " << moments);
    const std::string label = models::read_case(file.toStdString()).the_case.label;
    const bool is_new = label == "Hours of work";
    ++(is_new ? new_ones : old_ones);
    if (!is_new) {
      // Byte for byte as before, and the work is still in the recovery copy.
      QFile now(file);
      REQUIRE(now.open(QIODevice::ReadOnly));
      CHECK(now.readAll() == old_bytes);
      CHECK(copies_left() == with_copy);
    }
    if (!killed) {
      CHECK(is_new);
      break;
    }
    QFile::remove(file);
    QFile again(file);
    REQUIRE(again.open(QIODevice::WriteOnly));
    again.write(old_bytes);
  }
  // Opening, writing, syncing, renaming: both sides of the change were met.
  CHECK(moments > 10);
  CHECK(old_ones > 5);
  CHECK(new_ones > 1);
}

TEST_CASE("what a killed program left behind is offered at the next start, and gone when it is turned down") {
  models::CaseFile case_file = models::default_case();
  case_file.the_case.label = "Half done";
  for (const bool wanted : {true, false}) {
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
      try {
        auto* recovery = new Recovery(Recovery::usual_folder());
        recovery->keep(case_file, {});
        ::kill(::getpid(), SIGKILL);
      } catch (...) {
      }
      ::_exit(1);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status));

    Settings seen = Settings::read();
    seen.cautions_seen = true;
    seen.write();
    OpenedWindow opened;
    MainWindow& w = opened.window;
    int asked = 0;
    w.files().ask_recover = [&](const Leftover& leftover) {
      ++asked;
      CHECK(leftover.case_file.the_case.label == "Half done");
      return wanted;
    };
    w.files().begin({});
    opened.settle();
    CHECK(asked == 1);
    CHECK((w.session().case_file().the_case.label == "Half done") == wanted);
    CHECK(w.session().is_saved() != wanted);
    CHECK(w.session().recovery().leftovers().empty());
  }
}
