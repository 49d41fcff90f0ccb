/* What stands on every page round its drawing: frame, title strip, check bars.
 *
 * A page's furniture is a sheet of its own, laid out at 1 : 1, whose origin is the page's lower left corner.
 */
#pragma once

#include "sheet/sheet.h"

/* Where things stand on a page, mm from its lower left corner, y up. */
typedef struct
{
  double   width, height;
  RwBox    frame; /* what the margins leave */
  RwBox    room;  /* for the drawing: the frame less the title strip and the bands of the check bars */
} RwPageShape;

/* Pages with bars have a band of RW_BAR_BAND for each, at the left and over the title strip. */
RwPageShape rw_page_shape (double width, double height, double margin, gboolean with_bars);

#define RW_BAR_BAND 9.0
#define RW_TITLE_STRIP 15.0

typedef struct
{
  const char *project;
  const char *title; /* of the sheet */
  const char *view;  /* "seen from the head side"; may be empty */
  const char *units;
  const char *scale;
  const char *paper;
  const char *date;
  const char *revision; /* "revision B" */
  const char *page; /* "sheet 3 of 17, page 1 of 4" */
} RwTitle;

/* The title strip along the lower edge of the frame: the project and the sheet; the view; the rest.  What is
 * too long for its place is cut short. */
void rw_frame_title (RwSheet *frame, const RwPageShape *shape, const RwTitle *title);

/* The line round the page. */
void rw_frame_border (RwSheet *frame, const RwPageShape *shape);

/* Bars of 100 mm and 4 in along both axes, in the bands left of the room and below it.  scale: paper mm per
 * mm of the drawing; where it is not 1 the level bar says what it measures in the drawing. */
void rw_frame_bars (RwSheet *frame, const RwPageShape *shape, double scale);
