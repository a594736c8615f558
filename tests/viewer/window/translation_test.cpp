#include "viewer/window/frame/translation.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>
#include <algorithm>
#include <catch2/catch.hpp>

#include "geometry/base/error.h"
#include "geometry/hands/tolerance.h"
#include "geometry/head/scale.h"
#include "geometry/plan/solve.h"
#include "models/generic/generic_head.h"
#include "models/heads/load_head.h"
#include "tests/viewer/window/bench.h"
#include "viewer/picture/picture.h"
#include "viewer/sheet/content.h"
#include "viewer/stage/scene/gaps_shown.h"
#include "viewer/words/head_text.h"
#include "viewer/words/sentences.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("a translation that lies there for the locale is used, and without one the texts stay English") {
  QTemporaryDir folder;
  CHECK_FALSE(translate(*qApp, QLocale("de_DE"), {folder.path()}));
  QFile texts(folder.filePath("scalpmark_de.ts"));
  REQUIRE(texts.open(QIODevice::WriteOnly));
  texts.write(R"(<?xml version="1.0" encoding="utf-8"?><!DOCTYPE TS><TS version="2.1" language="de">
    <context><name>scalpmark::window::MainWindow</name>
      <message><source>Explain</source><translation>Zeigen</translation></message>
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
  update.start("lupdate", {"-silent", "-locations", "none", "-no-obsolete", "-I", source, source + "/viewer",
                           "-ts", fresh});
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
  const QStringList kept = sources(source + "/viewer/window/translations/scalpmark.ts");
  CHECK(kept.size() > 300);
  CHECK(sources(fresh) == kept);  // otherwise: ninja -C build translations
}

namespace {

/// A language in which every text of stage, sheet and lesson, and of the kernel on them, stands between
/// brackets.
class Brackets : public QTranslator {
public:
  QString translate(const char* context, const char* text, const char* /*meaning*/,
                    int /*count*/) const override {
    return QLatin1String(context) == QLatin1String("Words") ||
                   QLatin1String(context) == QLatin1String("Sentences")
               ? QChar(0x27e6) + QString::fromUtf8(text) + QChar(0x27e7)
               : QString();
  }
  [[nodiscard]] bool isEmpty() const override { return false; }
};

/// Numbers with their units, names of positions, and what comes from data: none of them is a text.
bool needs_no_translation(QString text) {
  for (const char* data : {"Figure-of-eight coil, 70 mm", "Bench head, morning class"}) text.remove(data);
  static const QRegularExpression plain(
      "^(?:[+-]?[0-9]+(?:[.,][0-9])?(?:\\s*(?:cm|mm|\u00b0|%))?|[A-Z]+[a-z]*[0-9z]+(?:-[A-Z]+[0-9z]+)?|cm|[.:"
      ",; ])*$");
  return plain.match(text).hasMatch();
}

}  // namespace

TEST_CASE("stage and sheet say nothing that cannot be translated") {
  const models::CaseFile kept = demo_case();
  const models::LoadedHead loaded = models::load_head(kept);
  const geometry::Plan plan = geometry::solve(loaded.head, kept.entered, geometry::TapeDistances::each_path);
  Brackets brackets;
  QCoreApplication::installTranslator(&brackets);
  std::vector<std::string> said;

  const viewer::SheetContent sheet =
      viewer::sheet_content(kept, loaded.head, loaded.description, plan, viewer::date_today(),
                            viewer::off_by_hand(loaded.head, kept.entered, plan));
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

  viewer::Shown shown;
  for (const viewer::Thing thing : viewer::all_things()) shown.things.insert(thing);
  shown.head_description = viewer::head_in_words(kept, loaded);
  shown.tolerance = std::make_shared<const geometry::Tolerance>(
      geometry::tolerance(loaded.head, kept.entered, plan, kept.entered.errors, {.placements = 100}));
  shown.gaps = viewer::gaps_under(loaded.head, kept.entered, plan.treatment);
  {
    viewer::Picture picture({1280, 800});
    for (const viewer::View view : {viewer::View::left, viewer::View::front_left, viewer::View::above}) {
      picture.stage().show(loaded.head, kept.entered, plan, shown);
      picture.stage().look(view);
      (void)picture.draw();
      for (const auto& label : picture.stage().labels()) said.push_back(label.wish.text);
      for (const auto& caption : picture.stage().captions())
        if (caption.text != "legend") said.push_back(caption.text);
    }
  }
  QCoreApplication::removeTranslator(&brackets);

  CHECK(on_the_sheet > 100);
  CHECK(said.size() > on_the_sheet + 40);
  for (const std::string& text : said) {
    // What is left once every bracket, innermost first, is taken out, was never given to a translator.
    QString left = QString::fromStdString(text);
    static const QRegularExpression bracket("\u27e6[^\u27e6\u27e7]*\u27e7");
    while (left.contains(bracket)) left.remove(bracket);
    CAPTURE(text, left.toStdString());
    CHECK(needs_no_translation(left));
  }
}

namespace {

/// The texts of a context in the file that is handed to translators.
QStringList handed_to_translators(const QString& context) {
  QFile file(QStringLiteral(SCALPMARK_SOURCE_DIR "/viewer/window/translations/scalpmark.ts"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  QStringList texts;
  QString here;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("name")) here = xml.readElementText();
    if (xml.name() == QLatin1String("source") && here == context) texts << xml.readElementText();
  }
  return texts;
}

/// What stands between the brackets of a call, from the opening one on.
QString argument_of(const QString& code, int open) {
  int depth = 0;
  bool in_text = false;
  for (int i = open; i < code.size(); ++i) {
    if (in_text) {
      if (code[i] == '\\')
        ++i;
      else if (code[i] == '"')
        in_text = false;
      continue;
    }
    if (code[i] == '"') in_text = true;
    if (code[i] == '(') ++depth;
    if (code[i] == ')' && --depth == 0) return code.mid(open + 1, i - open - 1);
  }
  return {};
}

}  // namespace

TEST_CASE("what the kernel and the readers refuse, warn of and note is known to the translators' table") {
  static const QRegularExpression call(
      R"((?:throw (?:ModelError|GeometryError)|return ModelError|notes\.push_back|notes\.emplace_back|warnings\.push_back)\()");
  static const QRegularExpression text(R"re("((?:[^"\\]|\\.)*)")re"), joined(R"re("\s*\n\s*")re");
  const QStringList known = handed_to_translators("Sentences");
  CHECK(known.size() > 200);
  int looked_at = 0;
  for (const char* folder : {"/geometry", "/models"}) {
    const QDir files(QStringLiteral(SCALPMARK_SOURCE_DIR) + folder, "*.cpp");
    for (const QString& name : files.entryList()) {
      QFile file(files.filePath(name));
      REQUIRE(file.open(QIODevice::ReadOnly));
      const QString code = QString::fromUtf8(file.readAll());
      for (auto calls = call.globalMatch(code); calls.hasNext();) {
        QString argument = argument_of(code, calls.next().capturedEnd() - 1);
        argument.remove(joined);
        for (auto texts = text.globalMatch(argument); texts.hasNext();) {
          const QString piece = texts.next().captured(1).replace("\\\"", "\"");
          // Words of a few letters (units, "a", "the") stand inside other pieces.
          if (piece.count(QRegularExpression("[a-z]")) < 12) continue;
          ++looked_at;
          CAPTURE(name.toStdString(), piece.toStdString());
          CHECK(std::any_of(known.begin(), known.end(),
                            [&](const QString& sentence) { return sentence.contains(piece); }));
        }
      }
    }
  }
  CHECK(looked_at > 150);
}

TEST_CASE("a refusal is said in the language of the desktop, its numbers and names kept") {
  class Mirrored : public QTranslator {
  public:
    QString translate(const char* context, const char* text, const char* /*meaning*/,
                      int /*count*/) const override {
      if (QLatin1String(context) != QLatin1String("Sentences")) return {};
      if (QLatin1String(text) == QLatin1String("nasion-inion")) return "NASION-INION";
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
  tapes.nasion_inion_mm = 900;
  std::string refusal;
  try {
    (void)geometry::scale_to_tapes(models::generic_head(), tapes);
  } catch (const geometry::GeometryError& error) {
    refusal = error.what();
  }
  CAPTURE(refusal);
  CHECK(viewer::translated(refusal).toStdString() == refusal);  // English without a translator
  QCoreApplication::installTranslator(&mirrored);
  const std::string said = viewer::translated(refusal).toStdString();
  const std::string file = viewer::translated("100%1 %2.obj is empty; export it again.").toStdString();
  const std::string within = viewer::translated(
                                 "a.obj could not be made into a skin (The surface has no triangles.); "
                                 "repair the mesh in the program "
                                 "that made it.")
                                 .toStdString();
  QCoreApplication::removeTranslator(&mirrored);
  CAPTURE(said);
  CHECK(within == "a.obj: Keine Dreiecke.");  // a sentence in a sentence
  CHECK(said.starts_with("Gelesen: 90 cm am Band NASION-INION; richtig sind "));
  CHECK(file == "Leer: 100%1 %2.obj.");  // a part's own signs are left alone
  CHECK(viewer::translated("Nobody says this.").toStdString() == "Nobody says this.");
}
