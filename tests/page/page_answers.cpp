// The kernel of a page as the program has it: answers the questions (one a line, on the standard input) about
// a case, one a line. usage: page_answers CASE.json SKIN ("generic", or a file of a page's bytes)
#include <fstream>
#include <iostream>
#include <iterator>
#include <span>
#include <string>

#include "viewer/page/kernel/page_kernel.h"
#include "viewer/page/kernel/skin_bytes.h"

namespace {

std::string whole(const char* file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) return 2;
  std::optional<scalpmark::geometry::Surface> skin;
  if (std::string(argv[2]) != "generic") {
    const std::string bytes = whole(argv[2]);
    skin = scalpmark::viewer::surface_from(std::as_bytes(std::span(bytes)));
  }
  const scalpmark::viewer::PageKernel kernel(whole(argv[1]), std::move(skin));
  for (std::string question; std::getline(std::cin, question);) std::cout << kernel.answer(question) << "\n";
}
