#pragma once

#include <QGuiApplication>
#include <array>
#include <memory>

namespace scalpmark::viewer {

/// While it lives Qt can draw text: by the application that there is, or by one of its own that needs no
/// display.
class TextWithoutDisplay {
public:
  TextWithoutDisplay();
  ~TextWithoutDisplay();
  TextWithoutDisplay(const TextWithoutDisplay&) = delete;
  TextWithoutDisplay& operator=(const TextWithoutDisplay&) = delete;

private:
  // Qt keeps pointers to these.
  std::array<char, 10> name_{"scalpmark"}, option_{"-platform"}, platform_{"offscreen"};
  std::array<char*, 4> arguments_{name_.data(), option_.data(), platform_.data(), nullptr};
  int count_ = 3;
  QtMessageHandler former_ = nullptr;
  std::unique_ptr<QGuiApplication> own_;
};

}  // namespace scalpmark::viewer
