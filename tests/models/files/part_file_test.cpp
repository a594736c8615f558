#include "models/files/part_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>

#include "models/files/safe_file.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::PartFile;
using tests::read_bytes;
using tests::TemporaryFolder;
using tests::write_bytes;
namespace fs = std::filesystem;

TEST_CASE("a part has no name while it is written, takes its place whole, and is gone if it is given up") {
  const TemporaryFolder folder;
  {
    PartFile given_up(folder.path(), 0600);
    REQUIRE(given_up.descriptor() >= 0);
    REQUIRE(::write(given_up.descriptor(), "half", 4) == 4);
    CHECK(folder.count() == 0);  // every file system that tests run on can do that
  }
  CHECK(folder.count() == 0);
  write_bytes(folder / "case.json", "old");
  PartFile part(folder.path(), 0600);
  REQUIRE(::write(part.descriptor(), "new", 3) == 3);
  CHECK(read_bytes(folder / "case.json") == "old");
  CHECK(part.rename_to(folder / "case.json"));
  CHECK(read_bytes(folder / "case.json") == "new");
  CHECK(folder.count() == 1);
}

TEST_CASE("a part in a folder that is missing, or renamed onto a folder, says why not and leaves nothing") {
  const TemporaryFolder folder;
  const PartFile none(folder / "missing", 0600);
  CHECK(none.descriptor() < 0);
  CHECK(none.error() == ENOENT);
  fs::create_directory(folder / "sub");
  write_bytes(folder / "sub" / "file", "x");
  {
    PartFile part(folder.path(), 0600);
    CHECK_FALSE(part.rename_to(folder / "sub"));
    CHECK(part.error() == EISDIR);
  }
  CHECK(folder.count() == 1);
}

TEST_CASE("parts left by a dead run go at the next write, those of a living one and files of others stay") {
  const TemporaryFolder folder;
  write_bytes(folder / ".scalpmark-4000000-0.part", "left over");
  write_bytes(folder / ".scalpmark-4000000-17.part", "");
  write_bytes(folder / ".scalpmark-notes", "not a part");
  write_bytes(folder / "a.part", "another program's");
  fs::create_directory(folder / ".scalpmark-1-1.part");
  write_bytes(folder / "elsewhere", "a link leads here");
  fs::create_symlink("elsewhere", folder / ".scalpmark-2-2.part");
  const fs::path living = write_bytes(folder / ".scalpmark-3-3.part", "being written");
  const int held = ::open(living.c_str(), O_WRONLY | O_CLOEXEC);
  REQUIRE(held >= 0);
  REQUIRE(::flock(held, LOCK_EX | LOCK_NB) == 0);

  models::write_whole(folder / "plan.json", "{}");
  CHECK_FALSE(fs::exists(folder / ".scalpmark-4000000-0.part"));
  CHECK_FALSE(fs::exists(folder / ".scalpmark-4000000-17.part"));
  CHECK(fs::exists(folder / ".scalpmark-notes"));
  CHECK(fs::exists(folder / "a.part"));
  CHECK(fs::is_directory(folder / ".scalpmark-1-1.part"));
  CHECK(fs::is_symlink(folder / ".scalpmark-2-2.part"));
  CHECK(read_bytes(folder / "elsewhere") == "a link leads here");
  CHECK(fs::exists(living));
  ::close(held);
  models::write_whole(folder / "plan.json", "{}");
  CHECK_FALSE(fs::exists(living));
  CHECK(fs::exists(folder / "plan.json"));
}

TEST_CASE("a run killed while it writes leaves the old file whole and no part") {
  const TemporaryFolder folder;
  const std::string old(200'000, 'o'), fresh(3'000'000, 'n');
  for (const int signal : {SIGKILL, SIGTERM, SIGINT, SIGHUP, SIGXFSZ})
    for (int i = 0; i < 8; ++i) {
      write_bytes(folder / "plan.json", old);
      // Held back until the child no longer has this test's own handler.
      sigset_t held, before;
      ::sigemptyset(&held);
      ::sigaddset(&held, signal);
      ::sigprocmask(SIG_BLOCK, &held, &before);
      const pid_t child = ::fork();
      if (child == 0) {
        (void)std::signal(signal, SIG_DFL);
        ::sigprocmask(SIG_SETMASK, &before, nullptr);
        for (;;) models::write_whole(folder / "plan.json", fresh);
      }
      ::sigprocmask(SIG_SETMASK, &before, nullptr);
      REQUIRE(child >= 0);
      ::usleep(static_cast<useconds_t>(500 + 1700 * i));
      ::kill(child, signal);
      REQUIRE(::waitpid(child, nullptr, 0) == child);
      const std::string kept = read_bytes(folder / "plan.json");
      CHECK((kept == old || kept == fresh));
      // Between a part's name and its renaming lies an instant; what is caught there goes at the next write.
      models::write_whole(folder / "other.json", "{}");
      CHECK(folder.count() == 2);
    }
}
