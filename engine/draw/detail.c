#include "detail.h"

#include <math.h>
#include <string.h>

/* Details before the whole: the first view that dimensions the subject, else the first that has its shape. */
static const RwView rw_order[] = {
  RW_VIEW_COURSES, RW_VIEW_POT, RW_VIEW_HEEL, RW_VIEW_HEADSTOCK, RW_VIEW_SECTIONS, RW_VIEW_FRETBOARD,
  RW_VIEW_HOOK, RW_VIEW_SIDE, RW_VIEW_PLAN, RW_VIEW_WHOLE,
};

/* Where the parts are seen best, by the first word of an id. */
static const struct
{
  const char *word;
  RwView      view;
  RwLayer     layer;
} rw_parts[] = {
  { "scale", RW_VIEW_FRETBOARD, RW_LAYER_FRETBOARD }, { "frets", RW_VIEW_FRETBOARD, RW_LAYER_FRETBOARD },
  { "fretboard", RW_VIEW_FRETBOARD, RW_LAYER_FRETBOARD }, { "nut", RW_VIEW_PLAN, RW_LAYER_STRINGS },
  { "fifth", RW_VIEW_PLAN, RW_LAYER_STRINGS }, { "strings", RW_VIEW_PLAN, RW_LAYER_STRINGS },
  { "neck", RW_VIEW_SIDE, RW_LAYER_NECK }, { "headstock", RW_VIEW_HEADSTOCK, RW_LAYER_HEADSTOCK },
  { "rim", RW_VIEW_COURSES, RW_LAYER_RIM }, { "head", RW_VIEW_POT, RW_LAYER_HEAD },
  { "hoop", RW_VIEW_POT, RW_LAYER_HOOP }, { "hooks", RW_VIEW_POT, RW_LAYER_HOOKS },
  { "shoes", RW_VIEW_POT, RW_LAYER_HOOKS }, { "joint", RW_VIEW_HEEL, RW_LAYER_JOINT },
  { "bridge", RW_VIEW_SIDE, RW_LAYER_BRIDGE }, { "tailpiece", RW_VIEW_PLAN, RW_LAYER_BRIDGE },
};

static gboolean
is_lettering (const RwItem *item)
{
  return item->kind != RW_ITEM_PATH;
}

void
rw_detail_free (RwDetail *detail)
{
  if (detail == NULL)
    return;
  rw_sheet_free (detail->sheet);
  g_array_unref (detail->items);
  g_free (detail);
}

/* ---- the view ---- */

/* How well a sheet shows the subject: 2 with a dimension or leader, 1 as a shape, 0 not at all. */
static int
shows (const RwSheet *sheet, RwSubject subject)
{
  int best = 0;

  for (guint i = 0; i < sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (rw_subject_same (item->subject, subject))
        best = MAX (best, is_lettering (item) ? 2 : 1);
    }
  return best;
}

static RwSheet *
best_view (RwSubject subject, const RwResult *result, RwStyle style)
{
  RwSheet *best = NULL;
  int best_shown = 0;

  for (guint i = 0; i < G_N_ELEMENTS (rw_order) && best_shown < 2; i++)
    {
      RwSheet *sheet = rw_draw (rw_order[i], result, NULL, style);
      int shown = shows (sheet, subject);

      if (shown > best_shown)
        {
          best_shown = shown;
          g_clear_pointer (&best, rw_sheet_free);
          best = g_steal_pointer (&sheet);
        }
      g_clear_pointer (&sheet, rw_sheet_free);
    }
  return best;
}

static const char *
id_of (RwSubject subject)
{
  if (subject.param >= 0)
    return rw_param ((RwParamId) subject.param)->id;
  return subject.slot >= 0 ? rw_slot_dim ((RwSlot) subject.slot)->id : "";
}

/* The row of rw_parts, or -1. */
static int
part_of (RwSubject subject)
{
  const char *id = id_of (subject);

  for (guint i = 0; i < G_N_ELEMENTS (rw_parts); i++)
    if (g_str_has_prefix (id, rw_parts[i].word) && id[strlen (rw_parts[i].word)] == '.')
      return (int) i;
  return -1;
}

/* ---- what is on it ---- */

static void
drop_other_lettering (RwSheet *sheet, RwSubject subject)
{
  for (guint i = sheet->items->len; i-- > 0;)
    {
      RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (!is_lettering (item) || rw_subject_same (item->subject, subject))
        continue;
      g_clear_pointer (&item->text, g_free);
      g_clear_pointer (&item->name, g_free);
      g_array_remove_index (sheet->items, i);
    }
}

/* Marks an item and looks at it too. */
static void
mark (RwDetail *detail, int i)
{
  RwBox own = rw_item_extent (detail->sheet, &g_array_index (detail->sheet->items, RwItem, i));
  RwBox *box = &detail->box;

  g_array_append_val (detail->items, i);
  *box = (RwBox){ MIN (box->x0, own.x0), MIN (box->y0, own.y0), MAX (box->x1, own.x1), MAX (box->y1, own.y1) };
}

RwDetail *
rw_detail_new (RwSubject subject, const RwResult *result, RwStyle style)
{
  RwSheet *sheet = best_view (subject, result, style);
  int part = sheet == NULL ? part_of (subject) : -1;
  RwDetail *detail;

  if (part >= 0)
    sheet = rw_draw (rw_parts[part].view, result, NULL, style);
  if (sheet == NULL)
    return NULL;

  drop_other_lettering (sheet, subject);
  detail = g_new0 (RwDetail, 1);
  detail->sheet = sheet;
  detail->box = (RwBox){ HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL };
  detail->items = g_array_new (FALSE, FALSE, sizeof (int));
  for (int i = 0; i < (int) sheet->items->len; i++)
    {
      const RwItem *item = &g_array_index (sheet->items, RwItem, i);

      if (part >= 0 ? item->layer == rw_parts[part].layer : rw_subject_same (item->subject, subject))
        mark (detail, i);
    }
  if (detail->items->len == 0)
    g_clear_pointer (&detail, rw_detail_free);
  return detail;
}
