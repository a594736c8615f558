#include "models/files/csv.h"

#include <catch2/catch.hpp>

#include "models/files/error.h"
#include "tests/support/sentence.h"

using namespace scalpmark;
using models::read_csv;
using tests::is_sentence;
using tests::sentence_of;

namespace {

std::string refusal(const std::string& text) {
  return sentence_of<models::ModelError>([&] { (void)read_csv(text, "table.csv"); });
}

}  // namespace

TEST_CASE("a table is read as RFC 4180 writes it") {
  // RFC 4180, section 2: records end in CR LF, the last may lack it; commas, quotation marks (doubled) and
  // line breaks stand in quoted cells; spaces are part of a cell.
  const auto table = read_csv("aaa,bbb,ccc\r\n\"zz,z\",\"y\"\"yy\",\"x\r\nx\"\r\n 1 ,,3", "table.csv");
  CHECK(table.columns == std::vector<std::string>{"aaa", "bbb", "ccc"});
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].cells == std::vector<std::string>{"zz,z", "y\"yy", "x\r\nx"});
  CHECK(table.rows[0].line == 2);
  CHECK(table.rows[1].cells == std::vector<std::string>{" 1 ", "", "3"});
  CHECK(table.rows[1].line == 4);  // the break inside a cell counts
}

TEST_CASE("line feeds alone, a byte order mark and blank lines do no harm") {
  const auto table = read_csv(
      "\xEF\xBB\xBF"
      "a,b\n\n1,2\n\"\",\"\"\n\n",
      "table.csv");
  CHECK(table.columns == std::vector<std::string>{"a", "b"});
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].line == 3);
  CHECK(table.rows[1].cells == std::vector<std::string>{"", ""});
}

TEST_CASE("what is no such table is refused, and its line is named") {
  struct Bad {
    std::string text, said;
  };
  for (const Bad& bad :
       std::vector<Bad>{{"", "table.csv is empty"},
                        {"\n\n", "table.csv is empty"},
                        {"a,b\n1,2\n3\n", "line 3 has 1 cells, but there are 2 columns"},
                        {"a,b\n1,2,3\n", "line 2 has 3 cells"},
                        {"a,b\n\"1,2\n3,4\n", "line 2: a quotation mark begins a cell that never ends"},
                        {"a,b\n1\"2,3\n", "line 2: a quotation mark stands inside"},
                        {"a,b\n\"1\"2,3\n", "line 2: something follows a quotation mark"},
                        {"a;b\n1;2\n", "semicolons between its columns"},
                        {"a,b,a\n1,2,3\n", "line 1: the column \"a\" is there twice"},
                        {std::string("a,b\0\n", 5), "zero bytes"},
                        {"a,b\n\xff,2\n", "not UTF-8"}}) {
    const std::string said = refusal(bad.text);
    CAPTURE(bad.text, said);
    CHECK(is_sentence(said));
    CHECK(said.find(bad.said) != std::string::npos);
  }
}

TEST_CASE("a row is written so that it reads the same") {
  const std::vector<std::string> cells{"plain", "", "with, comma", "with \"marks\"", "two\nlines", "ü"};
  const std::string row = models::csv_row(cells);
  CHECK(row == "plain,,\"with, comma\",\"with \"\"marks\"\"\",\"two\nlines\",ü\r\n");
  CHECK(read_csv("a,b,c,d,e,f\r\n" + row, "t").rows.at(0).cells == cells);
  CHECK(models::csv_row({"", "a"}) == ",a\r\n");
}

TEST_CASE("free text is no formula to a spreadsheet, and reads back as it was") {
  // OWASP, "CSV Injection": cells that begin with = + - @, tab, carriage return or line feed, and the
  // full-width forms of the four; an apostrophe before them; separators and quotation marks must not let a
  // cell end early.
  struct Written {
    std::string text, cell;
  };
  for (const Written& each : std::vector<Written>{{"=1+1", "'=1+1"},
                                                  {"+1", "'+1"},
                                                  {"-1", "'-1"},
                                                  {"@SUM(A1)", "'@SUM(A1)"},
                                                  {"\t=1", "'\t'=1"},
                                                  {"\r=1", "'\r'=1"},
                                                  {"\n=1", "'\n'=1"},
                                                  {"\xEF\xBC\x9D#", "'\xEF\xBC\x9D#"},
                                                  {"\xEF\xBC\x8B#", "'\xEF\xBC\x8B#"},
                                                  {"\xEF\xBC\x8D#", "'\xEF\xBC\x8D#"},
                                                  {"\xEF\xBC\xA0#", "'\xEF\xBC\xA0#"},
                                                  {"AB;=1", "AB;'=1"},
                                                  {"\";=1", "\";'=1"},
                                                  {"AB;\"=1\"", "AB;'\"=1\""},
                                                  {"'=1", "''=1"},
                                                  {"''-", "'''-"},
                                                  {"AB", "AB"},
                                                  {"A-B", "A-B"},
                                                  {"a = b, c@d", "a = b, c@d"},
                                                  {"'AB'", "'AB'"},
                                                  {"'", "'"},
                                                  {"", ""},
                                                  {"\xC3\xBC", "\xC3\xBC"}}) {
    CAPTURE(each.text);
    CHECK(models::csv_text(each.text) == each.cell);
    CHECK(models::text_of_csv(each.cell) == each.text);
    const std::string row = models::csv_row({models::csv_text(each.text), "-3.2"});
    const auto read = read_csv("a,b\r\n" + row, "t").rows.at(0).cells;
    CHECK(models::text_of_csv(read[0]) == each.text);
    CHECK(read[1] == "-3.2");
  }
  // Where semicolons or tabs divide cells, text with one is still in one cell.
  CHECK(models::csv_row({"a;b"}) == "\"a;b\"\r\n");
  CHECK(models::csv_row({"a\tb"}) == "\"a\tb\"\r\n");
  // What somebody else has written without an apostrophe is taken as it is.
  CHECK(models::text_of_csv("-1") == "-1");
}
