#include "viewer/window/frame/translation.h"

#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTranslator>
#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "geometry/hands/tolerance.h"
#include "geometry/head/scale.h"
#include "geometry/plan/solve.h"
#include "models/cases/case_head.h"
#include "models/generic/generic_head.h"
#include "models/heads/load_head.h"
#include "tests/viewer/window/opened_window.h"
#include "viewer/picture/picture.h"
#include "viewer/sheet/content.h"
#include "viewer/sheet/date.h"
#include "viewer/sheet/sheet.h"
#include "viewer/stage/scene/gaps_shown.h"
#include "viewer/window/steps/verdict.h"
#include "viewer/words/head_text.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("a translation that lies there for the locale is used, and without one the texts stay English") {
  QTemporaryDir folder;
  CHECK_FALSE(translate(*qApp, QLocale("de_DE"), {folder.path()}));
  QFile texts(folder.filePath("scalpmark_de.ts"));
  REQUIRE(texts.open(QIODevice::WriteOnly));
  texts.write(R"(<?xml version="1.0" encoding="utf-8"?><!DOCTYPE TS><TS version="2.1" language="de">
    <context><name>scalpmark::window::TopBar</name>
      <message><source>Explain</source><translation>Zeigen</translation></message></context>
    <context><name>scalpmark::window::Menus</name>
      <message><source>From above</source><translation>Von oben</translation></message></context>
    <context><name>Lengths</name>
      <message><source>cm</source><translation>Zentimeter</translation></message></context></TS>)");
  texts.close();
  QProcess release;
  release.start("lrelease", {texts.fileName(), "-qm", folder.filePath("scalpmark_de.qm")});
  REQUIRE(release.waitForFinished(60'000));
  REQUIRE(release.exitCode() == 0);
  REQUIRE(translate(*qApp, QLocale("de_AT"), {folder.path()}));
  {
    OpenedWindow opened;
    CHECK(opened.window.mode_button(Mode::explain)->text() == "Zeigen");
    CHECK(opened.window.mode_button(Mode::check)->text() == "Check");  // not translated: as it is
    CHECK(unit_name(LengthUnit::centimetre) == "Zentimeter");
    bool found = false;
    for (const QAction* action : opened.window.findChildren<QAction*>())
      found |= action->text() == "Von oben";
    CHECK(found);
  }
  for (auto* translator : qApp->findChildren<QTranslator*>()) {
    QCoreApplication::removeTranslator(translator);
    delete translator;
  }
  CHECK(unit_name(LengthUnit::centimetre) == "cm");
}

TEST_CASE("every text of the window stands in the file that is handed to translators") {
  // lupdate finds no text that the file lacks, and none under a context that is not looked up.
  QTemporaryDir folder;
  const QString source = QStringLiteral(SCALPMARK_SOURCE_DIR);
  const QString fresh = folder.filePath("scalpmark.ts");
  QProcess update;
  // As viewer/window/CMakeLists.txt does it.
  update.start("lupdate",
               {"-silent", "-locations", "none", "-no-obsolete", "-extensions", "cpp,h", "-tr-function-alias",
                "tr+=of,Q_DECLARE_TR_FUNCTIONS+=SCALPMARK_MESSAGES_IN", "-I", source, source + "/geometry",
                source + "/models", source + "/viewer", "-ts", fresh});
  REQUIRE(update.waitForFinished(120'000));
  CHECK(update.readAllStandardError().isEmpty());
  const auto sources = [](const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    QStringList lines;
    for (const QString& line : QString::fromUtf8(file.readAll()).split('\n'))
      if (line.contains("<source>") || line.contains("<name>")) lines << line.trimmed();
    lines.sort();  // lupdate adds new texts at the end of their context
    return lines;
  };
  const QStringList listed = sources(source + "/viewer/window/translations/scalpmark.ts");
  CHECK(listed.size() > 300);
  CHECK(listed.contains("<name>Message</name>"));
  for (const QString& line : listed) {
    CAPTURE(line.toStdString());
    // What kernel and readers say is looked up under one name (viewer/words/words.cpp).
    CHECK_FALSE(line.contains(QRegularExpression("<name>scalpmark::(geometry|models)")));
  }
  CHECK(sources(fresh) == listed);  // otherwise: ninja -C build translations
}

namespace {

/// A language in which every text of stage, sheet and lesson, and of the kernel on them, stands between
/// brackets.
class Brackets : public QTranslator {
public:
  QString translate(const char* context, const char* text, const char* /*meaning*/,
                    int /*count*/) const override {
    if (QLatin1String(text) == QLatin1String(".")) return ",";  // before decimals
    return QLatin1String(context) == QLatin1String("Words") ||
                   QLatin1String(context) == QLatin1String("Message")
               ? QChar(0x27e6) + QString::fromUtf8(text) + QChar(0x27e7)
               : QString();
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

/// What is left of a text once every bracket, innermost first, is taken out: it was never given to a
/// translator.
QString not_translated(QString text) {
  static const QRegularExpression bracket("\u27e6[^\u27e6\u27e7]*\u27e7");
  while (text.contains(bracket)) text.remove(bracket);
  return text.simplified();
}

/// What comes from data is no text of ours.
QString without_data(QString text) {
  for (const char* data : {"Figure-of-eight coil, 70 mm", "Bench head, morning class", "Scalpmark"})
    text.remove(data);
  return text;
}

/// Numbers with their units, and names of positions.
bool needs_no_translation(const QString& with_data) {
  const QString text = without_data(with_data);
  static const QRegularExpression plain(
      "^(?:[+-]?[0-9]+(?:,[0-9])?(?:\\s*(?:cm|mm|\u00b0|%))?|[A-Z]+[a-z]*[0-9z]+(?:-[A-Z]+[0-9z]+)?|cm|[.:"
      ",; \u2013])*$");
  return plain.match(text).hasMatch();
}

}  // namespace

TEST_CASE("stage and sheet say nothing that cannot be translated") {
  const models::CaseFile case_file = demo_case();
  const models::LoadedHead loaded = models::load_head(case_file);
  const geometry::Plan plan =
      geometry::solve(loaded.head, case_file.the_case, geometry::TapeDistances::each_path);
  Brackets brackets;
  QCoreApplication::installTranslator(&brackets);
  std::vector<std::string> said;
  bool legend = false;

  const viewer::SheetContent sheet =
      viewer::sheet_content(case_file, loaded, plan, viewer::date_today(),
                            viewer::off_by_hand(loaded.head, case_file.the_case, plan));
  said = {sheet.label, sheet.date, sheet.head, sheet.head_note, sheet.not_this};
  for (const auto* table : {&sheet.measures, &sheet.search, &sheet.coil, &sheet.treatment, &sheet.cortex,
                            &sheet.tapes, &sheet.rules, &sheet.alternatives}) {
    said.push_back(table->title);
    said.push_back(table->note);
    for (const auto& column : table->columns) said.push_back(column.heading);
    for (const auto& row : table->rows) said.insert(said.end(), row.begin(), row.end());
  }
  said.insert(said.end(), sheet.cautions.begin(), sheet.cautions.end());
  const std::size_t on_the_sheet = said.size();
  // The whole page, its headings, legend and lines to fill in too.
  QTemporaryDir folder;
  QFile page(folder.filePath("sheet.pdf"));
  REQUIRE(page.open(QIODevice::WriteOnly));
  page.write(QByteArray::fromStdString(viewer::sheet_pdf(sheet, {}, viewer::Paper::a4)));
  page.close();

  viewer::Shown shown;
  for (const viewer::Thing thing : viewer::all_things()) shown.things.insert(thing);
  shown.head_description = viewer::head_in_words(case_file, loaded);
  shown.tolerance = std::make_shared<const geometry::Tolerance>(geometry::tolerance(
      loaded.head, case_file.the_case, plan, case_file.the_case.errors, {.placements = 100}));
  shown.gaps = viewer::gaps_under(loaded.head, case_file.the_case, plan.treatment);
  {
    const viewer::Display display;
    viewer::Picture picture(display, {1280, 800});
    for (const viewer::View view : {viewer::View::left, viewer::View::front_left, viewer::View::above}) {
      picture.stage().show(loaded.head, case_file.the_case, plan, shown);
      picture.stage().look(view);
      (void)picture.draw();
      for (const auto& label : picture.stage().labels()) said.push_back(label.wish.text);
      for (const auto& caption : picture.stage().captions()) {
        said.push_back(caption.text);
        legend = legend || caption.is_legend;
      }
    }
  }
  QCoreApplication::removeTranslator(&brackets);

  QProcess reader;
  reader.start("pdftotext", {"-raw", page.fileName(), "-"});
  REQUIRE(reader.waitForFinished(60'000));
  const QString whole_page =
      QString::fromUtf8(reader.readAllStandardOutput()).remove(QChar(0x200b)).simplified();
  CHECK(whole_page.count(QChar(0x27e6)) > 100);
  for (const QString& word : not_translated(without_data(whole_page)).split(' ')) {
    CAPTURE(word.toStdString());
    CHECK(needs_no_translation(word));
  }

  CHECK(legend);
  CHECK(on_the_sheet > 100);
  CHECK(said.size() > on_the_sheet + 40);
  for (const std::string& text : said) {
    const QString left = not_translated(QString::fromStdString(text));
    CAPTURE(text, left.toStdString());
    CHECK(needs_no_translation(left));
  }
}

TEST_CASE("a refusal is said in the language of the desktop, its numbers and names kept") {
  class Mirrored : public QTranslator {
  public:
    QString translate(const char* context, const char* text, const char* /*meaning*/,
                      int /*count*/) const override {
      if (QLatin1String(context) == QLatin1String("Words") && QLatin1String(text) == QLatin1String("."))
        return ",";
      if (QLatin1String(context) != QLatin1String("Message")) return {};
      if (QLatin1String(text) == QLatin1String("nasion-inion")) return "NASION-INION";
      if (QLatin1String(text) == QLatin1String("%1 cm")) return "%1 Zentimeter";
      if (QString::fromUtf8(text).startsWith("The %1 tape reads"))
        return "Gelesen: %2 am Band %1; richtig sind %3 bis %4.";
      if (QString::fromUtf8(text) == "%1 is empty; export it again.") return "Leer: %1.";
      if (QString::fromUtf8(text).startsWith("%1 could not be made into a skin")) return "%1: %2";
      if (QString::fromUtf8(text) == "The surface has no triangles.") return "Keine Dreiecke.";
      return {};
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
  } mirrored;
  geometry::MeasuredTapes tapes;
  tapes.nasion_inion_mm = 905;
  const auto refusal = [&]() -> geometry::Message {
    try {
      (void)geometry::scale_to_tapes(models::generic_head(), tapes);
    } catch (const geometry::GeometryError& error) {
      CHECK(viewer::translated(error) == error.what());  // English without a translator
      return error.message();
    }
    return {};
  }();
  using geometry::Message;
  QCoreApplication::installTranslator(&mirrored);
  const std::string said = viewer::words(refusal);
  const std::string file = viewer::words(Message::of("%1 is empty; export it again.", "100%1 %2.obj"));
  const std::string within = viewer::words(
      Message::of("%1 could not be made into a skin (%2); repair the mesh in the program that made it.",
                  "a.obj", Message::of("The surface has no triangles.")));
  const std::string nobody = viewer::words(Message::verbatim("Nobody says this 1.5 times."));
  const std::string length = viewer::small_length(14.66);
  QCoreApplication::removeTranslator(&mirrored);
  CHECK(within == "a.obj: Keine Dreiecke.");  // a sentence in a sentence
  CHECK(said.starts_with("Gelesen: 90,5 Zentimeter am Band NASION-INION; richtig sind "));
  CHECK(file == "Leer: 100%1 %2.obj.");  // a part's own signs are left alone
  CHECK(nobody == "Nobody says this 1.5 times.");
  CHECK(length == "14,7 mm");
  CHECK(viewer::small_length(14.66) == "14.7 mm");
}

TEST_CASE("a check is shown in the language of the desktop, its reason too") {
  geometry::Check off;
  off.verdict = geometry::Verdict::both_off;
  off.pulse_off_mm = 84;
  off.angle_error_deg = -12;
  Brackets brackets;
  QCoreApplication::installTranslator(&brackets);
  const QString reason = verdict_text(off).reason;
  QCoreApplication::removeTranslator(&brackets);
  CHECK(verdict_text(off).reason.startsWith("Move and turn the coil"));
  CHECK(verdict_text(off).reason.contains("8.4 cm from the site"));
  CHECK(reason.contains("8,4"));
  CHECK(not_translated(reason).isEmpty());
}
