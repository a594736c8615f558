// A libFuzzer target for the reader named when compiled (SCALPMARK_FUZZED). With --seeds FOLDER as its only
// arguments it writes the seeds there instead.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "tests/fuzz/readers.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;

namespace {

const fuzz::Reader& reader() {
  for (const fuzz::Reader& one : fuzz::readers())
    if (one.name == SCALPMARK_FUZZED) return one;
  std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerInitialize(int* argc, char*** argv) {
  if (*argc == 3 && std::string_view((*argv)[1]) == "--seeds") {
    int n = 0;
    for (const std::string& seed : reader().seeds)
      tests::write_bytes(std::filesystem::path((*argv)[2]) / ("seed" + std::to_string(n++)), seed);
    std::exit(0);
  }
  return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t count) {
  reader().read(reader(), {reinterpret_cast<const char*>(bytes), count}, models::read_skin);
  return 0;
}
