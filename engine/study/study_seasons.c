/* How much wider and thinner, taller and lower the wood gets between the driest and the dampest of the year. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

static const struct
{
  const char *name;
  RwSlot low, high;
} moving[] = {
  { N_("Board width"), RW_MOVE_BOARD_WIDTH_LOW, RW_MOVE_BOARD_WIDTH_HIGH },
  { N_("Rim wall"), RW_MOVE_RIM_WALL_LOW, RW_MOVE_RIM_WALL_HIGH },
  { N_("Rim height"), RW_MOVE_RIM_HEIGHT_LOW, RW_MOVE_RIM_HEIGHT_HIGH },
};

void
rw_study_seasons (RwStudyDraft *draft)
{
  RwColumnKind kind = { "mm", 0, RW_COLUMN_BAR };

  draft->study->row_title = g_strdup (draft->translate (N_("What moves")));
  for (gsize i = 0; i < G_N_ELEMENTS (moving); i++)
    rw_study_row (draft, g_strdup (draft->translate (moving[i].name)));
  draft->study->panels[0] = g_strdup (draft->translate (N_("From the shop to the driest and the dampest")));

  double *low = rw_study_column (draft, kind, g_strdup (draft->translate (N_("At the driest"))), NULL);
  double *high = rw_study_column (draft, kind, g_strdup (draft->translate (N_("At the dampest"))), NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (moving); i++)
    {
      low[i] = draft->result->value[moving[i].low];
      high[i] = draft->result->value[moving[i].high];
    }
}
