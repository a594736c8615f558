// What `scalpmark` does by itself, and what it hands to the whole program.
#include <catch2/catch.hpp>
#include <cstdlib>
#include <string>

#include "tests/support/command_run.h"
#include "tests/support/own_folder.h"

using namespace scalpmark;

namespace {

/// The libraries that the system's linker loads for a program (ld.so(8)).
std::string linked_by(const tests::OwnFolder& folder, const std::string& program) {
  const std::string out = folder.file("linked");
  REQUIRE(std::system(("LD_TRACE_LOADED_OBJECTS=1 '" + program + "' >'" + out + "'").c_str()) == 0);
  return tests::slurp(out);
}

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("the program that solves links none of the libraries that read meshes, draw or print") {
  const tests::OwnFolder folder;
  const std::string alone = linked_by(folder, SCALPMARK_PROGRAM);
  const std::string whole = linked_by(folder, SCALPMARK_PROGRAM "-whole");
  for (const char* library : {"libvtkCommonCore", "libQt5Core", "libassimp", "libOpenMesh"}) {
    CAPTURE(library);
    CHECK_FALSE(holds(alone, library));
    CHECK(holds(whole, library));
  }
}

TEST_CASE("a plan is the same whether the template's brain is kept or has to be made by the whole program") {
  const tests::OwnFolder folder;
  const std::string cache = folder.file("cache");
  const auto solved = [&](const std::string& name) {
    const std::string plan = folder.file(name);
    CHECK(std::system(("env -u DISPLAY XDG_CACHE_HOME='" + cache + "' '" SCALPMARK_PROGRAM "' solve '" +
                       tests::bench_case + "' --out '" + plan + "' 2>/dev/null")
                          .c_str()) == 0);
    return tests::slurp(plan);
  };
  const std::string made = solved("made.json"), kept = solved("kept.json");
  CHECK(holds(made, "cortex"));
  CHECK(made == kept);
}

TEST_CASE("a plan is the same however memory is asked for") {
  const tests::OwnFolder folder;
  const auto solved = [&](const std::string& environment, const std::string& name) {
    const std::string plan = folder.file(name);
    CHECK(std::system((environment + " '" SCALPMARK_PROGRAM "' solve '" + tests::bench_case + "' --out '" +
                       plan + "' 2>/dev/null")
                          .c_str()) == 0);
    return tests::slurp(plan);
  };
  const std::string usual = solved("env -u GLIBC_TUNABLES", "usual.json");
  CHECK(holds(usual, "treatment"));
  CHECK(solved("GLIBC_TUNABLES=glibc.malloc.perturb=7", "called.json") ==
        usual);  // fresh memory is full of 7s
}
