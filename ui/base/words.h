/* Words and numbers as the window shows them, translated.  Strings marked new are freed by the caller. */
#pragma once

#include "check/finding.h"
#include "sheet/sheet.h"

/* The option of a choice in plain words: "neck takes one" -> "The neck takes one place". */
const char *rw_choice_words (const RwParam *param, int place);
int         rw_choice_count (const RwParam *param);

/* The name of the part that dimensions are grouped under: "setup" -> "Set-up". */
const char *rw_part_words (const char *part);

/* What a dimension is called, its index worked in.  New. */
char       *rw_slot_words (RwSlot slot);

const char *rw_severity_words (RwSeverity severity); /* "Stop" */
/* A finding in the language and the units of the window.  New. */
char       *rw_finding_text   (const RwFinding *finding, RwStyle style);

/* The decimal mark of the user's locale. */
char rw_locale_decimal (void);

/* A number with its unit, "2.40 mm", "1.92°", "11 3/8 in", with as many digits as suit the unit.  New. */
char *rw_number_words (double value, const char *unit, RwStyle style);
/* The same without the unit, for columns.  New. */
char *rw_number_bare  (double value, const char *unit, RwStyle style);

/* For tolerances: where the window has fractions, decimal inches.  The nearest part would often be none. */
RwStyle rw_style_fine (RwStyle style);

/* The value of a parameter as an entry shows it, without its unit.  Inches have four decimals; where they are
 * fractions, a length that is no 64th within 0.05 mm has decimals all the same: an entry tells the truth.
 * New. */
char *rw_entry_text (const RwDesign *design, RwParamId id, RwStyle style);

/* The value of any parameter with its unit, as short as it can be said: "650 mm", "Hard maple"; lengths
 * and angles are rounded to what is shown.  New. */
char *rw_value_words (const RwDesign *design, RwParamId id, RwStyle style);
/* The same without the unit.  New. */
char *rw_value_bare  (const RwDesign *design, RwParamId id, RwStyle style);

/* What may be entered, "120 to 450 mm"; NULL for kinds without a range.  New. */
char *rw_range_words (const RwParam *param, RwStyle style);

/* Subjects by id: a parameter, a dimension with its indices written out, or RW_SUBJECT_NONE.  List items,
 * "rim.course_thickness[2]", stand for their list. */
RwSubject rw_subject_of_id (const char *id);
char     *rw_subject_id    (RwSubject subject); /* new; NULL for none */
