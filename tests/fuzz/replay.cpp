// Feeds readers their seeds and bytes made from them by chance (the same each time): a short check that runs
// with the tests, where scripts/fuzz looks for hours. Files are read as the program reads them, in a process
// of PROGRAM's own: Debian's Assimp does crash on some, and that must stay a sentence. usage: fuzz_replay
// NAME SECONDS_AT_MOST ROUNDS PROGRAM
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "tests/fuzz/readers.h"

using namespace scalpmark;

namespace {

std::string spoilt(std::string bytes, std::mt19937& chance) {
  const auto pick = [&](std::size_t below) {
    return std::uniform_int_distribution<std::size_t>(0, below - 1)(chance);
  };
  for (std::size_t n = 1 + pick(8); n > 0 && !bytes.empty(); --n) {
    const std::size_t at = pick(bytes.size());
    switch (pick(6)) {
      case 0:
        bytes[at] = static_cast<char>(pick(256));
        break;
      case 1:
        bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << pick(8)));
        break;
      case 2:
        bytes.resize(at);
        break;
      case 3:
        bytes.insert(at, bytes.substr(pick(bytes.size()), 1 + pick(64)));
        break;
      case 4:
        bytes.erase(at, 1 + pick(64));
        break;
      default:
        bytes.replace(at, 4, pick(2) == 0 ? std::string(4, '\xff') : "9e99");
        break;
    }
  }
  return bytes;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 5) {
    std::fputs("usage: fuzz_replay NAME SECONDS_AT_MOST ROUNDS PROGRAM\n", stderr);
    return 2;
  }
  const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(std::atoi(argv[2]));
  for (const fuzz::Reader& reader : fuzz::readers()) {
    if (reader.name != argv[1]) continue;
    models::ReadingLimits limits;
    limits.silent_seconds = 20;
    const models::SkinReading apart = models::read_apart(argv[4], limits);
    const auto feed = [&](const std::string& bytes) { reader.read(reader, bytes, apart); };
    for (const std::string& seed : reader.seeds) feed(seed);
    std::mt19937 chance(1);
    int rounds = 0;
    for (; rounds < std::atoi(argv[3]) && std::chrono::steady_clock::now() < until; ++rounds)
      feed(spoilt(reader.seeds[static_cast<std::size_t>(rounds) % reader.seeds.size()], chance));
    std::printf("%s: %zu seeds and %d spoilt files\n", argv[1], reader.seeds.size(), rounds);
    return rounds > 0 ? 0 : 1;
  }
  std::fprintf(stderr, "fuzz_replay: there is no reader \"%s\"\n", argv[1]);
  return 2;
}
