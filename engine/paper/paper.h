/* Papers: the sheets that leave for the bench, one builder for each kind.
 *
 * A builder takes a solved build and gives a sheet without frame or title: those, and the cutting of what is
 * larger than the paper into pages, are added where papers are written (io/papers.h).  Adding a kind is one
 * builder and one row of the table in paper.c.
 *
 * Builders mirror their drawings for a left-handed build; text they leave to rw_sheet_mirror().
 */
#pragma once

#include "draw/drawing.h"
#include "project/project.h"

/* How a sheet comes to its page. */
typedef enum
{
  RW_PAPER_FULL_SIZE, /* 1 : 1, on as many pages as it takes, with register marks */
  RW_PAPER_FITTED,    /* on one page, at the largest usual scale that fits */
  RW_PAPER_LIST,      /* lettering: made for the page, page by page */
} RwPaperFit;

typedef struct
{
  const RwProject  *project;
  const RwResult   *result;   /* with measured values in place */
  const RwResult   *planned;  /* without */
  const RwMeasured *measured; /* never NULL */
  RwStyle           style;
  const char       *date; /* ISO 8601 */

  /* For lists: the page counted from 0, and the room inside its frame, mm.  The sheet's origin is the room's
   * upper left corner: x from 0 to width, y from 0 down to -height. */
  int    page;
  double width, height;

  /* For drawings: how long a line of notes may be, so that a page has it between its bands, mm; 0: as usual. */
  double note_width;
} RwPaperJob;

/* A builder returns a new sheet, or NULL: where the build has no such paper, or no such page. */
typedef RwSheet *(*RwPaperBuild) (const RwPaperJob *job);

typedef struct
{
  const char  *id;
  const char  *title; /* on the title block; untranslated */
  const char  *view;  /* "seen from the head side", or "" */
  RwPaperFit   fit;
  RwPaperBuild build;
} RwPaperKind;

/* In the order in which they are bound into one document. */
extern const RwPaperKind rw_paper_kinds[];
extern const int         rw_paper_kinds_count;

/* Row of the table, or -1. */
int rw_paper_kind_find (const char *id);

/* Builders. */
RwSheet *rw_paper_general     (const RwPaperJob *job);
RwSheet *rw_paper_rim_strip   (const RwPaperJob *job);
RwSheet *rw_paper_ring        (const RwPaperJob *job);
RwSheet *rw_paper_segment     (const RwPaperJob *job);
RwSheet *rw_paper_rim_plan    (const RwPaperJob *job);
RwSheet *rw_paper_pot         (const RwPaperJob *job);
RwSheet *rw_paper_hooks_hoop  (const RwPaperJob *job);
RwSheet *rw_paper_heel        (const RwPaperJob *job);
RwSheet *rw_paper_neck_side   (const RwPaperJob *job);
RwSheet *rw_paper_neck_plan   (const RwPaperJob *job);
RwSheet *rw_paper_sections    (const RwPaperJob *job);
RwSheet *rw_paper_headstock   (const RwPaperJob *job);
RwSheet *rw_paper_fretboard   (const RwPaperJob *job);
RwSheet *rw_paper_scale_stick (const RwPaperJob *job);
RwSheet *rw_paper_bridge_nut  (const RwPaperJob *job);
RwSheet *rw_paper_steps       (const RwPaperJob *job);
RwSheet *rw_paper_dimensions  (const RwPaperJob *job);
RwSheet *rw_paper_shopping    (const RwPaperJob *job);
RwSheet *rw_paper_cutting     (const RwPaperJob *job);
