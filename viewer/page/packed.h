#pragma once

#include <string>
#include <string_view>

namespace scalpmark::viewer {

/// Bytes as text for a page: packed (zlib, RFC 1950, which browsers call "deflate") and written in base64.
[[nodiscard]] std::string packed(std::string_view bytes);

/// 'sha256-...' of a script or a style, by which a page's policy lets it in (Content Security Policy Level
/// 2).
[[nodiscard]] std::string policy_source(std::string_view text);

}  // namespace scalpmark::viewer
