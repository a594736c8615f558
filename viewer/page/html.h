#pragma once

#include <QString>
#include <string>
#include <string_view>
#include <vector>

namespace scalpmark::viewer {

/// Text as it may stand in HTML, between tags and in quoted attributes.
[[nodiscard]] std::string escaped(std::string_view text);

/// A text of Words::tr with %1 to %9 filled in, so escaped.
[[nodiscard]] std::string html_words(const QString& text, const std::vector<std::string>& parts = {});

}  // namespace scalpmark::viewer
