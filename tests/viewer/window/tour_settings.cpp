#include "tests/viewer/window/tour_settings.h"

#include <QDir>
#include <cstdio>

#include "models/coils/coil_library.h"
#include "tests/viewer/window/every_screen.h"
#include "tests/viewer/window/in_german.h"

namespace scalpmark::window {

namespace {

int mistaken = 0;

struct Setting {
  std::string name;
  QSize size;
  bool dark = false, inches = false, german = false, mri = false;
  geometry::Side side = geometry::Side::left;
  std::string coil = "figure-8-70";
  std::string landmark{};  ///< the site, where it is one
  geometry::MarkRule laid_by = geometry::MarkRule::drop;
  TypeSize letters = TypeSize::usual;
};

std::vector<Setting> settings() {
  const QSize small(960, 620), usual(1280, 800), large(1920, 1080);
  std::vector<Setting> all;
  for (const auto& [size, name] : {std::pair(small, "small"), {usual, "usual"}, {large, "large"}})
    for (const bool dark : {false, true})
      all.push_back({std::string(name) + (dark ? "-dark" : ""), size, dark});
  using geometry::Side;
  all.push_back({"right-90", usual, false, false, false, false, Side::right, "figure-8-90"});
  all.push_back({"inches", small, false, true, false, false, Side::right, "figure-8-70"});
  all.push_back({"across", usual, false, false, false, false, Side::left, "figure-8-70", "F4"});
  all.push_back({"german", small, false, false, true});
  // Marks drawn by one rule and the coil laid by another have more to say than any other case.
  all.push_back({"german-rules",
                 small,
                 false,
                 false,
                 true,
                 false,
                 Side::right,
                 "figure-8-70",
                 {},
                 geometry::MarkRule::tape});
  all.push_back({"largest",
                 small,
                 false,
                 true,
                 true,
                 false,
                 Side::right,
                 "angled-8-150",
                 {},
                 geometry::MarkRule::nearest,
                 TypeSize::largest});
  all.push_back({"mri", usual, true, true, false, true, Side::right, "figure-8-90"});
  return all;
}

models::CaseFile case_of(const Setting& s) {
  models::CaseFile file =
      s.mri ? models::read_case(SCALPMARK_SOURCE_DIR "/models/demo/template-mri.json") : demo_case();
  geometry::Case& c = file.the_case;
  c.side = s.side;
  c.coil.model = models::coil(s.coil);
  c.coil.centre_to_edge_mm = c.coil.model.centre_to_edge_mm;
  c.coil.laid_by = s.laid_by;
  if (!s.landmark.empty()) {
    c.treatment.rule = geometry::TreatmentRule::landmark;
    c.treatment.label = s.landmark;
  }
  return file;
}

void snap(OpenedWindow& opened, const QString& file) {
  QTest::qWait(400);  // until the panel has its new layout
  opened.shot().save(file);
}

void tour_of(const Setting& s, const QString& folder) {
  OpenedWindow opened(case_of(s));
  MainWindow& w = opened.window;
  emit w.menus().dark(s.dark);
  emit w.menus().type_size(s.letters);
  w.set_unit(s.inches ? LengthUnit::inch : LengthUnit::centimetre);
  w.resize(s.size);
  OpenedWindow::wait_until([&] { return w.size() == s.size; });
  every_screen(opened, [&](const std::string& name) {
    if (w.size() != s.size) w.resize(s.size);
    const QString file = QStringLiteral("%1/%2-%3.png")
                             .arg(folder, QString::fromStdString(s.name), QString::fromStdString(name));
    snap(opened, file);
    std::printf("%s\n", qPrintable(file));
    say_mistaken(w, s.name + ", " + name);
  });
  w.set_unit(LengthUnit::centimetre);
  emit w.menus().dark(false);
  emit w.menus().type_size(TypeSize::usual);
}

}  // namespace

void say_mistaken(MainWindow& w, const std::string& where) {
  const std::string wrong = mistaken_texts(w);
  if (!wrong.empty()) {
    ++mistaken;
    std::printf("LABELS on %s:\n%s", where.c_str(), wrong.c_str());
  }
  std::fflush(stdout);
}

int mistaken_so_far() {
  return mistaken;
}

bool tour_of_settings(const QString& folder, const std::string& only) {
  QDir().mkpath(folder);
  for (const Setting& s : settings())
    if (only.empty() || s.name == only) {
      const InGerman german(s.german);
      tour_of(s, folder);
    }
  return mistaken == 0;
}

}  // namespace scalpmark::window
