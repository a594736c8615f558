// Files made to do harm, read the way the program reads them: in a process of its own.
#include <zlib.h>

#include <atomic>
#include <catch2/catch.hpp>
#include <chrono>
#include <fstream>
#include <thread>

#include "models/files/error.h"
#include "models/heads/own_program.h"
#include "models/heads/skin_reading.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/nifti_writer.h"
#include "tests/support/sentence.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using models::HeadKind;
using models::ModelError;
using models::SkinRequest;
using tests::is_sentence;
using tests::TemporaryFolder;

namespace {

/// The refusal, or nothing where the file was read after all.
std::string refusal(const SkinRequest& request) {
  try {
    (void)models::read_apart(models::own_program())(request, {});
    return {};
  } catch (const ModelError& error) {
    CHECK(is_sentence(error.what()));
    return error.what();
  }
}

std::string gzipped(const std::string& bytes) {
  z_stream stream{};
  REQUIRE(deflateInit2(&stream, 9, Z_DEFLATED, 15 + 16, 9, Z_DEFAULT_STRATEGY) == Z_OK);
  std::string out(deflateBound(&stream, static_cast<uLong>(bytes.size())), '\0');
  std::string in = bytes;
  stream.next_in = reinterpret_cast<Bytef*>(in.data());
  stream.avail_in = static_cast<uInt>(in.size());
  stream.next_out = reinterpret_cast<Bytef*>(out.data());
  stream.avail_out = static_cast<uInt>(out.size());
  REQUIRE(deflate(&stream, Z_FINISH) == Z_STREAM_END);
  out.resize(stream.total_out);
  deflateEnd(&stream);
  return out;
}

}  // namespace

TEST_CASE("a .nii.gz of 100 MB that unpacks to 100 GB is refused, soon and in a sentence") {
  // gzip allows several streams one after the other (RFC 1952, section 2.2).
  const std::string zeros = gzipped(std::string(64U << 20U, '\0'));
  const TemporaryFolder folder;
  const auto bomb = [&](const std::string& name, const std::string& first) {
    auto file = folder / name;
    std::ofstream out(file, std::ios::binary);
    out.write(first.data(), static_cast<std::streamsize>(first.size()));
    for (int i = 0; i < 1600; ++i) out.write(zeros.data(), static_cast<std::streamsize>(zeros.size()));
    return file;
  };
  const auto begun = std::chrono::steady_clock::now();
  CHECK_FALSE(refusal({HeadKind::mri, bomb("zeros.nii.gz", ""), {}}).empty());
  // And with a header that is true of its first few bytes.
  tests::NiftiFile small;
  small.fill(8, 8, 8, [](int, int, int) { return 0.0; });
  CHECK_FALSE(refusal({HeadKind::mri, bomb("small.nii.gz", gzipped(small.bytes())), {}}).empty());
  // Far more than it takes; unpacking all would take many minutes.
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(120));
}

TEST_CASE("an OBJ with a number of a million digits is read or refused") {
  const TemporaryFolder folder;
  const std::string head = tests::obj_text(tests::RawMesh(tests::sphere(90, 3)));
  for (const std::string& number : {std::string(1000000, '9'), "0." + std::string(1000000, '3'),
                                    "1e" + std::string(1000000, '9'), "-" + std::string(1000000, '1')}) {
    const auto file = tests::write_bytes(folder / "a.obj", "v " + number + " 0 0\n" + head);
    CAPTURE(number.substr(0, 4));
    (void)refusal({HeadKind::mesh, file, {}});
  }
}

TEST_CASE("a file that grows while it is read is read or refused, and reading ends") {
  const TemporaryFolder folder;
  const std::string head = tests::obj_text(tests::RawMesh(tests::sphere(90, 4)));
  const auto file = tests::write_bytes(folder / "growing.obj", head);
  std::atomic<bool> over{false};
  std::thread writer([&] {
    std::ofstream out(file, std::ios::app);
    while (!over) {
      out << "v 1 2 3\nf 1 2 3\n" << std::flush;
      std::this_thread::sleep_for(std::chrono::microseconds(200));
    }
  });
  for (int i = 0; i < 5; ++i) (void)refusal({HeadKind::mesh, file, {}});
  over = true;
  writer.join();
}
