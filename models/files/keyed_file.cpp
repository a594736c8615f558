#include "models/files/keyed_file.h"

#include <algorithm>
#include <cstring>
#include <string_view>

namespace scalpmark::models {

namespace {

constexpr std::size_t key_bytes = sizeof(std::uint64_t);

std::size_t read_up_to(PlainFile& file, char* into, std::size_t count) {
  std::size_t got = 0;
  while (got < count) {
    const auto more = file.read(into + got, count - got);
    if (!more || *more == 0) break;
    got += *more;
  }
  return got;
}

}  // namespace

KeyedFile::KeyedFile(const std::filesystem::path& file, std::uintmax_t most_bytes) : file_(file) {
  if (file_.kind() != PlainFile::Kind::plain || file_.size() > most_bytes || file_.size() < key_bytes) return;
  left_ = ahead_ = file_.size() - key_bytes;
  part_.resize(static_cast<std::size_t>(std::min<std::uintmax_t>(key_part_bytes, ahead_)));
}

bool KeyedFile::refill() {
  const auto wanted = static_cast<std::size_t>(std::min<std::uintmax_t>(part_.size(), ahead_));
  at_ = 0;
  filled_ = read_up_to(file_, part_.data(), wanted);
  if (filled_ < wanted) {
    left_ = ahead_ = filled_ = 0;  // shorter than it was when opened
    return false;
  }
  ahead_ -= filled_;
  key_ = byte_key({part_.data(), filled_}, key_);
  return true;
}

template <class Put>
bool KeyedFile::pass_on(std::uintmax_t count, const Put& put) {
  if (count > left_) return false;
  while (count > 0) {
    if (at_ == filled_ && !refill()) return false;
    const auto now = static_cast<std::size_t>(std::min<std::uintmax_t>(count, filled_ - at_));
    put(part_.data() + at_, now);
    at_ += now;
    count -= now;
    left_ -= now;
  }
  return true;
}

bool KeyedFile::take(void* into, std::uintmax_t count) {
  auto* to = static_cast<char*>(into);
  return pass_on(count, [&](const char* bytes, std::size_t now) {
    std::memcpy(to, bytes, now);
    to += now;
  });
}

bool KeyedFile::append(std::vector<std::uint8_t>& to, std::uintmax_t count) {
  if (count > left_) return false;
  to.reserve(to.size() + static_cast<std::size_t>(count));
  return pass_on(count, [&](const char* bytes, std::size_t now) {
    const auto* raw = reinterpret_cast<const std::uint8_t*>(bytes);
    to.insert(to.end(), raw, raw + now);
  });
}

bool KeyedFile::take_count(std::size_t& count, std::size_t bytes_each) {
  std::uint64_t number = 0;
  if (!take_number(number) || number > left_ / bytes_each) return false;
  count = static_cast<std::size_t>(number);
  return true;
}

bool KeyedFile::ends_well() {
  std::uint64_t written = 0;
  char more = 0;
  return file_.kind() == PlainFile::Kind::plain && file_.size() >= key_bytes && left_ == 0 && ahead_ == 0 &&
         read_up_to(file_, reinterpret_cast<char*>(&written), key_bytes) == key_bytes && written == key_ &&
         read_up_to(file_, &more, 1) == 0;
}

}  // namespace scalpmark::models
