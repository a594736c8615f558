#include "viewer/page/packed.h"

#include <QByteArray>
#include <QCryptographicHash>

namespace scalpmark::viewer {

namespace {

QByteArray in_place(std::string_view bytes) {
  return QByteArray::fromRawData(bytes.data(), static_cast<int>(bytes.size()));
}

}  // namespace

std::string packed(std::string_view bytes) {
  constexpr int length_before = 4, best = 9;  // Qt writes the length before what zlib makes
  return qCompress(in_place(bytes), best).mid(length_before).toBase64().toStdString();
}

std::string policy_source(std::string_view text) {
  return "'sha256-" +
         QCryptographicHash::hash(in_place(text), QCryptographicHash::Sha256).toBase64().toStdString() + "'";
}

}  // namespace scalpmark::viewer
