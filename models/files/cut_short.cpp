#include "models/files/cut_short.h"

namespace scalpmark::models {

std::string cut_short(std::string_view text) {
  std::size_t bytes = 40;
  if (text.size() <= bytes) return std::string(text);
  while (bytes > 0 && (static_cast<unsigned char>(text[bytes]) & 0xC0U) == 0x80U) --bytes;
  return std::string(text.substr(0, bytes)) + "...";
}

}  // namespace scalpmark::models
