#include "tests/rooms/rooms.h"

#include <catch2/catch.hpp>
#include <fstream>

#include "tests/support/temporary_folder.h"

using namespace scalpmark::tests;

namespace {

/// A small tree in a folder of its own, read as the real one is.
class MadeUpTree {
public:
  void write(const std::string& path, const std::string& text) const {
    const auto file = folder_.path() / path;
    std::filesystem::create_directories(file.parent_path());
    std::ofstream(file) << text;
  }
  [[nodiscard]] std::vector<SourceFile> sources() const { return read_sources(folder_.path(), order); }
  [[nodiscard]] std::vector<std::string> wrong() const { return against_order(sources(), order, strange); }

  const RoomOrder order{{"", {"cellar", "house"}}, {"house", {"kitchen", "hall", "roof.cpp"}}};
  const Strangers strange{{"cellar", {"Q"}}};

private:
  TemporaryFolder folder_;
};

}  // namespace

TEST_CASE("every include of ours keeps to the order of the folders") {
  const auto sources = read_sources(SCALPMARK_SOURCE_DIR, room_order());
  REQUIRE(sources.size() > 300);
  for (const auto& sentence : against_order(sources, room_order(), strangers())) FAIL_CHECK(sentence);
}

TEST_CASE("no files include each other in a circle") {
  for (const auto& circle : circles(read_sources(SCALPMARK_SOURCE_DIR, room_order()))) FAIL_CHECK(circle);
}

TEST_CASE("a tree in order has nothing said against it") {
  const MadeUpTree tree;
  tree.write("cellar/shelf.h", "#include <Eigen/Dense>\n");
  tree.write("house/kitchen/table.h", "#include <QWidget>\n#include \"cellar/shelf.h\"\n");
  tree.write("house/kitchen/chair.cpp", "#include \"house/kitchen/table.h\"\n");
  tree.write("house/hall/drawer/deep.h",
             "  #  include \"house/kitchen/table.h\" // #include \"nowhere.h\"\n");
  tree.write("house/roof.cpp", "#include \"house/hall/drawer/deep.h\"\n");
  tree.write("house/notes.txt", "#include \"nowhere.h\"\n");
  CHECK(tree.sources().size() == 5);
  CHECK(tree.wrong().empty());
  CHECK(circles(tree.sources()).empty());
}

TEST_CASE("an include against the order is found between folders, modules and single files") {
  const MadeUpTree tree;
  tree.write("cellar/shelf.h", "\n#include \"house/kitchen/table.h\"\n");
  tree.write("house/kitchen/table.h", "#include \"house/hall/coat.h\"\n");
  tree.write("house/hall/coat.h", "#include \"house/roof.cpp\"\n");
  tree.write("house/roof.cpp", "#include \"cellar/shelf.h\"\n");
  CHECK(tree.wrong() == std::vector<std::string>{
                            "cellar/shelf.h:2: house/kitchen/table.h lies below cellar",
                            "house/hall/coat.h:1: house/roof.cpp lies below hall",
                            "house/kitchen/table.h:1: house/hall/coat.h lies below kitchen",
                        });
}

TEST_CASE("a folder without a place, an include without a file and a stranger are found") {
  const MadeUpTree tree;
  tree.write("house/attic/box.h", "");
  tree.write("house/loose.h", "");
  tree.write("house/hall/coat.h", "#include \"coat_hook.h\"\n");
  tree.write("cellar/shelf.h", "#include <QWidget>\n");
  CHECK(tree.wrong() == std::vector<std::string>{
                            "cellar/shelf.h:1: QWidget is not for cellar/",
                            "house/attic/box.h: attic has no place in the order of house/",
                            "house/hall/coat.h:1: coat_hook.h is no file of ours, named from the top",
                            "house/loose.h: loose.h has no place in the order of house/",
                        });
}

TEST_CASE("files that include each other in a circle are found, once, and by name") {
  const MadeUpTree tree;
  tree.write("house/hall/a.h", "#include \"house/hall/b.h\"\n#include \"house/hall/d.h\"\n");
  tree.write("house/hall/b.h", "#include \"house/hall/c.h\"\n");
  tree.write("house/hall/c.h", "#include \"house/hall/a.h\"\n");
  tree.write("house/hall/d.h", "");
  tree.write("house/hall/e.cpp", "#include \"house/hall/c.h\"\n");
  CHECK(tree.wrong().empty());
  CHECK(circles(tree.sources()) ==
        std::vector<std::string>{"house/hall/a.h -> house/hall/b.h -> house/hall/c.h -> house/hall/a.h"});
}
