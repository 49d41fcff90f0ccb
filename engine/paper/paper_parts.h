/* What the builders of full-size papers share: marks that keep a part the right way round on the bench, and
 * the finish of a sheet.
 *
 * Private to paper_*.c.  A builder draws a right-handed build, calls one of the mirrors for a left-handed
 * one, and puts its lines of notes down last, so that their order stays.  As with drawings, it does not ask
 * whether a number is there: rw_paper_end() takes away what has no place.
 */
#pragma once

#include "draw/draw_parts.h"
#include "paper.h"

/* Between a figure and its unit. */
#define RW_NO_BREAK "\302\240"

RwDraft rw_paper_begin (const RwPaperJob *job, const char *title);
RwSheet *rw_paper_end (RwDraft *draft);

/* In a left-handed build only: across turns treble and bass about, along turns head and tail about. */
void rw_paper_mirror_across (RwDraft *draft);
void rw_paper_mirror_along (RwDraft *draft);

/* A length with its unit, of so many decimals where it is in millimetres: "12.5 mm", "0.492 in".  A fraction
 * that is off by more than 0.1 mm has the millimetres beside it.  New. */
char *rw_paper_length (const RwDraft *draft, double value, int decimals);
/* The same without its unit, as a running figure.  What wants more than one decimal is too fine for fractions
 * and is in decimal inches then. */
char *rw_paper_figure (const RwDraft *draft, double value, int decimals);
char *rw_paper_degrees (const RwDraft *draft, double value);

/* Lettering in the middle over a point; words that tell a side or an end are large. */
void rw_paper_words (RwDraft *draft, RwPoint at, const char *words);
void rw_paper_side (RwDraft *draft, RwPoint at, double turn, const char *words);

/* Bytes of words that go on one line of small letters: up to the last space within the width, or all. */
gsize rw_paper_fit (const char *words, double width);

/* Where notes may begin: at the left, under all that is drawn so far, lettering and dimensions too. */
RwPoint rw_paper_under (RwDraft *draft);
/* A note, in as many lines as it takes: at moves on to the place of the next. */
void rw_paper_line (RwDraft *draft, RwPoint *at, const char *words);
/* The same in lines of a width, mm. */
void rw_paper_line_within (RwDraft *draft, RwPoint *at, double width, const char *words);
/* Between two parts of the notes: on small paper so much room that pages can be parted there. */
void rw_paper_part (const RwDraft *draft, RwPoint *at);
/* A cell of a table: small letters on a base line, y down from at by rows. */
#define RW_PAPER_ROW 4.4
void rw_paper_cell (RwDraft *draft, RwPoint at, RwAlign align, const char *words);
G_GNUC_PRINTF (3, 4)
void rw_paper_print (RwDraft *draft, RwPoint *at, const char *format, ...);

/* A hole to drill: its circle, and a cross by which to prick its centre. */
void rw_paper_hole (RwDraft *draft, RwPoint centre, double radius, const char *name, int number);
/* An arrow of direction, and one with two heads that tells how the grain runs, with words along it. */
void rw_paper_arrow (RwDraft *draft, RwPoint from, RwPoint to);
void rw_paper_grain (RwDraft *draft, RwPoint from, RwPoint to);
/* A mark on an edge, pointing at it from at, by dx, dy. */
void rw_paper_mark (RwDraft *draft, RwPoint at, double dx, double dy);

/* The frame in which fret lines stand square: the neck's, or the axis's. */
RwPoint rw_paper_square (const RwResult *result, double x, double y);
/* Outline of the board from the nut line to its end, laid on the sheet by map from the frame of the axis;
 * inset moves the edges in. */
void rw_paper_board (RwDraft *draft, RwMap map, RwPen pen, double inset);
