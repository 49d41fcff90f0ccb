/* What dry and damp air do to an instrument that comes out of the shop: strings over the action fret, fret ends and
 * fits, over the air of the home. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

#include "model/season.h"

#define STEP 5.0 /* % of humidity */
#define ROWS 32

/* Lines over the air; panel as in RwStudyColumn. */
static const struct
{
  const char *title, *label, *unit;
  gsize       at; /* in RwSeason */
  int         panel;
} lines[] = {
  { N_("Board width at the rim: change"), N_("board width"), "mm", G_STRUCT_OFFSET (RwSeason, board_width), 1 },
  { N_("Rim height: change"), N_("rim height"), "mm", G_STRUCT_OFFSET (RwSeason, rim_height), 1 },
  { N_("Fret ends past the board’s edge"), N_("fret ends"), "mm", G_STRUCT_OFFSET (RwSeason, fret_end), 1 },
  { N_("Play of the head round the rim"), N_("head’s play"), "mm", G_STRUCT_OFFSET (RwSeason, head_room), 1 },
  { N_("Rim wall: change"), NULL, "mm", G_STRUCT_OFFSET (RwSeason, rim_wall), RW_TABLE_ONLY },
  { N_("Gap at the heel’s cheeks"), NULL, "mm", G_STRUCT_OFFSET (RwSeason, heel_gap), RW_TABLE_ONLY },
  { N_("Head drawn tighter, nuts left alone"), NULL, "mm", G_STRUCT_OFFSET (RwSeason, head_drawn), RW_TABLE_ONLY },
  { N_("Moisture of the wood"), NULL, "%", G_STRUCT_OFFSET (RwSeason, moisture), RW_TABLE_ONLY },
};

/* Even steps between the driest and the dampest, those, and the shop. */
static guint
choose_airs (const RwDesign *d, double *at)
{
  const double given[] = { d->setup_humidity_low, d->setup_humidity_shop, d->setup_humidity_high };
  double least = fmin (given[0], fmin (given[1], given[2])), most = fmax (given[0], fmax (given[1], given[2]));
  guint count = 0;

  for (gsize i = 0; i < G_N_ELEMENTS (given); i++)
    at[count++] = given[i];
  for (double air = STEP * ceil (least / STEP); air < most && count < ROWS; air += STEP)
    at[count++] = air;
  return rw_study_sort_places (at, count);
}

static double *
column (RwStudyDraft *draft, RwColumnKind kind, char *title, const char *label)
{
  return rw_study_column (draft, kind, title, g_strdup (label != NULL ? draft->translate (label) : NULL));
}

/* "Long strings over fret 12". */
static char *
over_fret (const RwStudyDraft *draft, const char *pattern)
{
  g_autofree char *number = g_strdup_printf ("%d", (int) draft->result->used.setup_action_fret);
  g_auto (GStrv) parts = g_strsplit (draft->translate (pattern), "%d", 2);

  return g_strjoinv (number, parts);
}

static void
add_actions (RwStudyDraft *draft, const RwSeason *seasons)
{
  const RwDesign *d = &draft->result->used;
  guint shop = rw_study_row_of (draft, d->setup_humidity_shop);
  gboolean both = draft->result->plan.has_short && d->setup_action_fret > d->fifth_start_fret;
  RwColumnKind kind = { "mm", 0, RW_COLUMN_LINE }, now = { "mm", 0, RW_COLUMN_POINT };
  double *longs = column (draft, kind, over_fret (draft, N_("Long strings over fret %d")), N_("long"));
  double *shorts = both ? column (draft, kind, over_fret (draft, N_("Short string over fret %d")), N_("short")) : NULL;

  for (guint row = 0; row < draft->study->rows->len; row++)
    {
      longs[row] = seasons[row].action;
      if (both)
        shorts[row] = seasons[row].action_short;
    }
  column (draft, now, g_strdup (draft->translate (N_("Now"))), N_("shop"))[shop] = longs[shop];
}

void
rw_study_seasons (RwStudyDraft *draft)
{
  double at[ROWS];
  RwSeason seasons[ROWS];
  guint count = choose_airs (&draft->result->used, at);

  rw_seasons (draft->result, at, count, seasons);
  draft->study->free_range = TRUE;
  draft->study->panels[0] = over_fret (draft, N_("Strings over fret %d, the head kept at its note"));
  draft->study->panels[1] = g_strdup (draft->translate (N_("Wood, fret ends and fits, over the air’s humidity")));
  rw_study_places (draft, draft->translate (N_("Humidity of the air")), "%", at, count);
  add_actions (draft, seasons);
  for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
    {
      RwColumnKind kind = { lines[i].unit, lines[i].panel, RW_COLUMN_LINE };
      double *values = column (draft, kind, g_strdup (draft->translate (lines[i].title)), lines[i].label);

      for (guint row = 0; row < count; row++)
        values[row] = G_STRUCT_MEMBER (double, &seasons[row], lines[i].at);
    }
}
