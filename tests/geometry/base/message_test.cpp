#include "geometry/base/message.h"

#include <catch2/catch.hpp>

#include "geometry/base/error.h"

using namespace scalpmark::geometry;

TEST_CASE("a message is said in English with its parts in their places") {
  const Message tape =
      Message::of("The %1 tape reads %2; it must be from %3 to %4.", Message::of("nasion-inion"),
                  Message::of("%1 cm", number(90.04)), number(28), 44);
  CHECK(english(tape) == "The nasion-inion tape reads 90 cm; it must be from 28 to 44.");
  CHECK(english(Message::of("%2 before %1", "one", "two")) == "two before one");
  CHECK(english(Message()).empty());
  CHECK(english(std::vector{Message::of("a"), Message::of("b %1", 2)}) ==
        std::vector<std::string>{"a", "b 2"});
}

TEST_CASE("a part's own signs are left alone, and so is a sign without a part") {
  CHECK(english(Message::of("%1 is empty.", "100%1 %2.obj")) == "100%1 %2.obj is empty.");
  CHECK(english(Message::of("Kept %1 % of it.", number(99.5))) == "Kept 99.5 % of it.");
  CHECK(english(Message::of("%1 and %3, 30 % off %", "x")) == "x and %3, 30 % off %");
  CHECK(english(Message::verbatim("50 %1 %%")) == "50 %1 %%");
}

// Control characters: ECMA-48; direction of writing: Unicode Standard Annex 9; escapes: RFC 8259, section 7.
TEST_CASE("a part of a message stays on one line, and no terminal obeys it") {
  CHECK(english(Message::of("%1 is empty.", "two\nlines\r\tone\b\f.csv")) ==
        R"(two\nlines\r\tone\b\f.csv is empty.)");
  CHECK(english(Message::of("%1.", std::string("\x1b[2J\x7f\0end", 9))) == R"(\u001b[2J\u007f\u0000end.)");
  CHECK(english(Message::verbatim("\xC2\x9B"
                                  "2J")) == R"(\u009b2J)");  // the control sequence introducer, 8 bits
  CHECK(english(Message::verbatim("a\xE2\x80\xA8"
                                  "b\xE2\x80\xAE"
                                  "gpj.obj\xE2\x81\xA9")) == R"(a\u2028b\u202egpj.obj\u2069)");
  CHECK(english(Message::verbatim("\xD8\x9C\xE2\x80\x8F")) == R"(\u061c\u200f)");
  // What is in any language stays, and so does what is no UTF-8 or ends too early.
  for (const std::string text :
       {"Größe 5\xE2\x80\x89µm – “ok” 頭 \xF0\x9F\xA7\xA0", "\xFF\xC2", "\xE2\x80", "\\n \"", ""})
    CHECK(english(Message::verbatim(text)) == text);
  // Once is enough: what was escaped stays so in a message about it.
  const std::string once = english(Message::verbatim("a\nb"));
  CHECK(english(Message::of("%1", once)) == once);
}

TEST_CASE("a number is written with the decimals it was given and the mark of a language") {
  CHECK(to_text(number(2.25, 2)) == "2.25");
  CHECK(to_text(number(2.0, 2)) == "2");
  CHECK(to_text(Number{5, 1, true}) == "5.0");
  CHECK(to_text(Number{5, 1, true}, ",") == "5,0");
  CHECK(to_text(number(1234.5), ",") == "1234,5");
  CHECK(to_text(number(-0.01)) == "0");
  CHECK(english(Message::of("%1", std::size_t{150000})) == "150000");
}

TEST_CASE("messages are alike where pattern and parts are") {
  const auto about = [](const char* name, double mm) {
    return Message::of("The %1 is off by %2.", name, number(mm));
  };
  CHECK(about("nasion", 2) == about("nasion", 2));
  CHECK_FALSE(about("nasion", 2) == about("inion", 2));
  CHECK_FALSE(about("nasion", 2) == about("nasion", 2.5));
  CHECK_FALSE(Message::of("The nasion.") == Message::of("The %1.", "nasion"));
}

TEST_CASE("an error says its message in English and keeps it for other languages") {
  const Message message = Message::of("The %1 is %2 mm away.", Message::of("nasion"), number(16.4));
  const GeometryError error(message);
  CHECK(std::string(error.what()) == "The nasion is 16.4 mm away.");
  CHECK(error.message() == message);
}
