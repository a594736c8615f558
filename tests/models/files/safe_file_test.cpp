#include "models/files/safe_file.h"

#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <csignal>
#include <thread>
#include <vector>

#include "models/files/error.h"
#include "tests/support/sentence.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::ModelError;
using tests::is_sentence;
using tests::read_bytes;
using tests::sentence_of;
using tests::TemporaryFolder;
using tests::write_bytes;
namespace fs = std::filesystem;

namespace {

std::string refusal_to_write(const fs::path& file, const std::string& bytes) {
  return sentence_of<ModelError>([&] { models::write_whole(file, bytes); });
}

std::string refusal_to_read(const fs::path& file, std::size_t limit = 100) {
  return sentence_of<ModelError>([&] { (void)models::read_whole(file, limit); });
}

unsigned mode_of(const fs::path& file) {
  struct stat status {};
  REQUIRE(::stat(file.c_str(), &status) == 0);
  return status.st_mode & 0777U;
}

/// Files may not grow past `bytes` while this lives: a full disk as a program sees it, without one.
class SmallDisk {
public:
  explicit SmallDisk(rlim_t bytes) : old_handler_(std::signal(SIGXFSZ, SIG_IGN)) {
    ::getrlimit(RLIMIT_FSIZE, &old_);
    const rlimit small{bytes, old_.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &small);
  }
  ~SmallDisk() {
    ::setrlimit(RLIMIT_FSIZE, &old_);
    (void)std::signal(SIGXFSZ, old_handler_);
  }
  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;

private:
  void (*old_handler_)(int);
  rlimit old_{};
};

}  // namespace

TEST_CASE("a file is written whole and read back byte for byte") {
  const TemporaryFolder folder;
  std::string bytes(300'000, 'x');
  for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] = static_cast<char>(i * 7 % 256);
  models::write_whole(folder / "a", bytes);
  CHECK(models::read_whole(folder / "a", bytes.size()) == bytes);
  models::write_whole(folder / "a", "");
  CHECK(models::read_whole(folder / "a", 0).empty());
  CHECK(folder.count() == 1);
}

TEST_CASE("a new file is its owner's alone, an old one keeps its own permissions") {
  const TemporaryFolder folder;
  for (const mode_t mask : {0022U, 0000U, 0077U}) {  // a generous umask gives nobody else a look either
    const mode_t old = ::umask(mask);
    models::write_whole(folder / "private", "1");
    ::umask(old);
    CHECK(mode_of(folder / "private") == 0600);
    fs::remove(folder / "private");
  }
  for (const unsigned mode : {0664U, 0640U, 0644U}) {
    write_bytes(folder / "shared", "old");
    fs::permissions(folder / "shared", static_cast<fs::perms>(mode));
    models::write_whole(folder / "shared", "new");
    CHECK(mode_of(folder / "shared") == mode);
    CHECK(read_bytes(folder / "shared") == "new");
  }
}

TEST_CASE("a link to nothing is refused, and so is one to another user's file") {
  const TemporaryFolder folder;
  fs::create_symlink("missing", folder / "to nothing");
  CHECK(refusal_to_write(folder / "to nothing", "new").find("leads to no file") != std::string::npos);
  CHECK(fs::is_symlink(folder / "to nothing"));
  CHECK_FALSE(fs::exists(folder / "missing"));
  if (::geteuid() != 0) {
    WARN("only the superuser can make a file another user's, so a link to such was not tried");
    return;
  }
  write_bytes(folder / "others", "old");
  REQUIRE(::chown((folder / "others").c_str(), 65534, 65534) == 0);
  fs::create_symlink("others", folder / "link");
  CHECK(refusal_to_write(folder / "link", "new").find("another user") != std::string::npos);
  CHECK(read_bytes(folder / "others") == "old");
}

TEST_CASE("of a file's several names only the one written to gets the new bytes") {
  const TemporaryFolder folder;
  write_bytes(folder / "one", "old");
  fs::create_hard_link(folder / "one", folder / "other");
  models::write_whole(folder / "one", "new");
  CHECK(read_bytes(folder / "one") == "new");
  CHECK(read_bytes(folder / "other") == "old");
}

TEST_CASE("in a folder for all, where each keeps what is theirs, another user's file is not replaced") {
  if (::geteuid() != 0) {
    WARN("only the superuser can act as two users, so a folder for all was not tried");
    return;
  }
  const TemporaryFolder folder;
  fs::permissions(folder.path(), static_cast<fs::perms>(01777));
  write_bytes(folder / "plan.json", "old");
  fs::permissions(folder / "plan.json", static_cast<fs::perms>(0666));
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const bool dropped = ::setgid(65534) == 0 && ::setuid(65534) == 0;
    const std::string said = dropped ? refusal_to_write(folder / "plan.json", "new") : "";
    ::_exit(is_sentence(said) && said.find("not allowed") != std::string::npos ? 0 : 1);
  }
  int status = 1;
  REQUIRE(::waitpid(child, &status, 0) == child);
  CHECK(status == 0);
  CHECK(read_bytes(folder / "plan.json") == "old");
  CHECK(folder.count() == 1);
}

TEST_CASE("writing through a link leaves the link and changes the file it leads to") {
  const TemporaryFolder folder;
  write_bytes(folder / "file", "old");
  fs::create_symlink("file", folder / "link");
  models::write_whole(folder / "link", "new");
  CHECK(fs::is_symlink(folder / "link"));
  CHECK(read_bytes(folder / "file") == "new");
}

TEST_CASE("a disk that fills up leaves the old file untouched and no temporary") {
  const TemporaryFolder folder;
  write_bytes(folder / "case.json", "old");
  std::string said;
  {
    const SmallDisk small(1000);
    said = refusal_to_write(folder / "case.json", std::string(5000, 'n'));
  }
  CHECK(is_sentence(said));
  CHECK(said.find("case.json cannot be written") != std::string::npos);
  CHECK(read_bytes(folder / "case.json") == "old");
  CHECK(folder.count() == 1);
}

TEST_CASE("a disk of 64 kB that is full, or may only be read, leaves the old file and says so") {
  const TemporaryFolder folder;
  enum Outcome { good, wrong, no_disk };
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    // A disk of our own, that goes with this process and that nobody else sees.
    const int apart = CLONE_NEWNS | (::geteuid() == 0 ? 0 : CLONE_NEWUSER);
    const fs::path disk = folder / "";
    if (::unshare(apart) != 0 || ::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 ||
        ::mount("none", disk.c_str(), "tmpfs", 0, "size=64k") != 0)
      ::_exit(no_disk);
    const auto kept = [&](const std::string& bytes) {
      return read_bytes(disk / "case.json") == bytes && folder.count() == 1;
    };
    models::write_whole(disk / "case.json", "old");
    const std::string full = refusal_to_write(disk / "case.json", std::string(200'000, 'n'));
    bool fine = is_sentence(full) && full.find("the disk is full") != std::string::npos && kept("old");
    models::write_whole(disk / "case.json", std::string(20'000, 'n'));  // there is room for that
    fine = fine && kept(std::string(20'000, 'n'));
    if (::mount("none", disk.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) != 0) ::_exit(no_disk);
    const std::string locked = refusal_to_write(disk / "case.json", "new");
    const std::string another = refusal_to_write(disk / "another.json", "new");
    fine = fine && is_sentence(locked) && locked.find("can only be read") != std::string::npos &&
           is_sentence(another) && another.find("can only be read") != std::string::npos &&
           kept(std::string(20'000, 'n'));
    ::_exit(fine ? good : wrong);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  REQUIRE(WIFEXITED(status));
  if (WEXITSTATUS(status) == no_disk)
    WARN("this system lets nobody mount a disk of 64 kB; a full one was tried with a limit on files alone");
  else
    CHECK(WEXITSTATUS(status) == good);
}

TEST_CASE("places that cannot be written are refused, and nothing is left behind") {
  const TemporaryFolder folder;
  fs::create_directory(folder / "sub");
  write_bytes(folder / "file", "old");
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  fs::create_symlink("circle", folder / "circle");
  fs::create_symlink("round", folder / "about");
  fs::create_symlink("about", folder / "round");
  fs::create_symlink("pipe", folder / "to pipe");
  const std::size_t before = folder.count();
  const std::vector<fs::path> bad{folder / "missing" / "a",
                                  folder / "file" / "a",
                                  folder / "sub",
                                  folder / "sub" / "",
                                  folder / "pipe",
                                  folder / "circle",
                                  folder / "round",
                                  folder / "to pipe",
                                  folder / std::string(300, 'n'),
                                  "/dev/null",
                                  ""};
  for (const fs::path& file : bad) {
    CAPTURE(file);
    CHECK(is_sentence(refusal_to_write(file, "new")));
  }
  CHECK(refusal_to_write(folder / "sub", "new").find("is a folder") != std::string::npos);
  CHECK(refusal_to_write(folder / "missing" / "a", "new").find("no such folder") != std::string::npos);
  CHECK(folder.count() == before);
  CHECK(read_bytes(folder / "file") == "old");
  CHECK(fs::is_character_file("/dev/null"));
}

TEST_CASE("what may only be read is not replaced") {
  if (::geteuid() == 0) {
    // The superuser may write everywhere, so this can only be seen as somebody else.
    if (::fork() == 0) {
      const bool dropped = ::setgid(65534) == 0 && ::setuid(65534) == 0;
      const std::string said = dropped ? refusal_to_write("/etc/scalpmark-test", "new") : "";
      ::_exit(is_sentence(said) && said.find("not allowed") != std::string::npos ? 0 : 1);
    }
    int status = 1;
    REQUIRE(::wait(&status) > 0);
    CHECK(status == 0);
    return;
  }
  const TemporaryFolder folder;
  write_bytes(folder / "file", "old");
  fs::permissions(folder / "file", static_cast<fs::perms>(0444));
  CHECK(is_sentence(refusal_to_write(folder / "file", "new")));
  CHECK(read_bytes(folder / "file") == "old");
}

TEST_CASE("several writers at once never mix their bytes") {
  const TemporaryFolder folder;
  std::vector<std::thread> writers;
  for (int w = 0; w < 4; ++w)
    writers.emplace_back([&, w] {
      for (int i = 0; i < 20; ++i)
        models::write_whole(folder / "shared", std::string(10'000, static_cast<char>('a' + w)));
    });
  for (auto& writer : writers) writer.join();
  const std::string kept = read_bytes(folder / "shared");
  CHECK(kept.size() == 10'000);
  CHECK(kept.find_first_not_of(kept[0]) == std::string::npos);
  CHECK(folder.count() == 1);
}

TEST_CASE("a file that is missing, a folder, a pipe or too long is refused") {
  const TemporaryFolder folder;
  write_bytes(folder / "long", std::string(101, 'x'));
  write_bytes(folder / "fits", std::string(100, 'x'));
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  CHECK(refusal_to_read(folder / "fits") == "(accepted)");
  for (const fs::path& file : {folder / "long", folder / "missing", folder.path(), folder / "pipe",
                               fs::path("/dev/zero"), fs::path()}) {
    CAPTURE(file);
    CHECK(is_sentence(refusal_to_read(file)));
  }
  CHECK(refusal_to_read(folder / "missing").find("does not exist") != std::string::npos);
  CHECK(refusal_to_read(folder.path()).find("is a folder") != std::string::npos);
  CHECK(refusal_to_read(folder / "long").find("larger than 100 bytes") != std::string::npos);
}
