#include "stock_field.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "table/material.h"

static const struct
{
  const char *id;
  const char *label;
} fields[RW_STOCK_FIELD_COUNT] = {
  [RW_STOCK_NAME] = { "name", N_("Name") },
  [RW_STOCK_KIND] = { "kind", N_("Kind") },
  [RW_STOCK_MATERIAL] = { "material", N_("Material") },
  [RW_STOCK_LENGTH] = { "length", N_("Length") },
  [RW_STOCK_WIDTH] = { "width", N_("Width or diameter") },
  [RW_STOCK_THICKNESS] = { "thickness", N_("Thickness") },
  [RW_STOCK_COUNT] = { "count", N_("Count") },
  [RW_STOCK_AVOID] = { "avoid", N_("To avoid") },
  [RW_STOCK_PRICE] = { "price", N_("Price of one") },
  [RW_STOCK_MASS] = { "mass", N_("Mass of one") },
};

const char *
rw_stock_field_id (RwStockField field)
{
  return fields[field].id;
}

const char *
rw_stock_field_label (RwStockField field)
{
  return fields[field].label;
}

int
rw_stock_field_find (const char *id)
{
  for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
    if (g_ascii_strcasecmp (fields[field].id, id) == 0)
      return field;
  return -1;
}

/* ---- reading ---- */

static gboolean
refuse (GError **error, RwStockField field, const char *text, const char *wanted)
{
  g_autofree char *valid = g_utf8_make_valid (text, -1);
  gboolean long_text = g_utf8_strlen (valid, -1) > 40;
  g_autofree char *start = g_utf8_substring (valid, 0, long_text ? 39 : -1);
  g_autofree char *shown = g_strconcat (start, long_text ? "…" : "", NULL);

  g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: “%s” won’t do; %s"), _(fields[field].label), shown,
               wanted);
  return FALSE;
}

/* A quantity within 0 or least .. most; empty text is 0. */
static gboolean
read_quantity (RwStockField field, const char *text, const char *unit, double least, double most, RwStyle style,
               double *value, GError **error)
{
  g_autoptr (GError) reason = NULL;
  g_autofree char *wanted = NULL;
  const char *bare = strcmp (unit, "mm") == 0 && style.units != RW_UNITS_MM ? "in" : NULL;
  double read = 0;

  if (*text != '\0' && !rw_quantity_read (text, unit, bare, style.decimal, &read, &reason))
    return refuse (error, field, text, reason->message);
  if (*text != '\0' && (read < least || read > most))
    {
      g_autofree char *low = rw_quantity_show (least, unit, style.units, style.decimal);
      g_autofree char *high = rw_quantity_show (most, unit, style.units, style.decimal);

      wanted = g_strdup_printf (_("give %s to %s %s"), low, high, rw_quantity_unit (unit, style.units));
      return refuse (error, field, text, wanted);
    }
  *value = round (read * 1e6) / 1e6; /* 9 ft are 2743.2 mm, not 2743.2000000000003 */
  return TRUE;
}

static gboolean
read_kind (RwStockItem *item, const char *text, GError **error)
{
  g_autofree char *folded = g_utf8_casefold (text, -1);

  for (int kind = 0; kind < RW_STOCK_KIND_COUNT; kind++)
    {
      g_autofree char *translated = g_utf8_casefold (_(rw_stock_kind_label ((RwStockKind) kind)), -1);

      if (strcmp (rw_stock_kind_id ((RwStockKind) kind), folded) == 0 || strcmp (translated, folded) == 0)
        {
          item->kind = (RwStockKind) kind;
          return TRUE;
        }
    }
  return refuse (error, RW_STOCK_KIND, text, _("give board, sheet, bar, rod, tube or wire"));
}

static const char *
find_material (const char *text)
{
  g_autofree char *folded = g_utf8_casefold (text, -1);

  for (int i = 0; i < rw_woods_count + rw_metals_count; i++)
    {
      gboolean wood = i < rw_woods_count;
      const char *id = wood ? rw_woods[i].id : rw_metals[i - rw_woods_count].id;
      const char *label = wood ? rw_woods[i].label : rw_metals[i - rw_woods_count].label;
      g_autofree char *plain = g_utf8_casefold (label, -1), *translated = g_utf8_casefold (_(label), -1);

      if (strcmp (id, text) == 0 || strcmp (plain, folded) == 0 || strcmp (translated, folded) == 0)
        return id;
    }
  return NULL;
}

static gboolean
read_material (RwStockItem *item, const char *text, GError **error)
{
  const char *id = find_material (text);

  if (id == NULL)
    return refuse (error, RW_STOCK_MATERIAL, text, _("give a wood or a metal as the build form names it"));
  g_free (item->material);
  item->material = g_strdup (id);
  return TRUE;
}

static gboolean
read_count (RwStockItem *item, const char *text, GError **error)
{
  char *end;
  gint64 count = *text == '\0' ? 1 : g_ascii_strtoll (text, &end, 10);

  if ((*text != '\0' && (*end != '\0' || !g_ascii_isdigit (*text))) || count < 0 || count > RW_STOCK_COUNT_MAX)
    return refuse (error, RW_STOCK_COUNT, text, _("give a whole number up to 999"));
  item->count = (int) count;
  return TRUE;
}

/* "0..40; 820..860". */
static gboolean
read_avoid (RwStockItem *item, const char *text, RwStyle style, GError **error)
{
  g_auto (GStrv) parts = g_strsplit (text, ";", -1);
  g_autoptr (GArray) avoid = g_array_new (FALSE, FALSE, sizeof (RwStretch));

  for (int i = 0; parts[i] != NULL; i++)
    {
      char *part = g_strstrip (parts[i]), *dots = strstr (part, "..");
      RwStretch stretch;

      if (*part == '\0')
        continue;
      if (dots == NULL)
        return refuse (error, RW_STOCK_AVOID, part, _("write stretches as in 0..40; 820..860"));
      *dots = '\0';
      if (!read_quantity (RW_STOCK_AVOID, g_strstrip (part), "mm", 0, RW_STOCK_LENGTH_MAX, style, &stretch.from, error)
          || !read_quantity (RW_STOCK_AVOID, g_strstrip (dots + 2), "mm", 0, RW_STOCK_LENGTH_MAX, style, &stretch.to,
                             error))
        return FALSE;
      if (stretch.to <= stretch.from)
        return refuse (error, RW_STOCK_AVOID, dots + 2, _("a stretch ends after its beginning"));
      g_array_append_val (avoid, stretch);
    }
  g_array_unref (item->avoid);
  item->avoid = g_steal_pointer (&avoid);
  return TRUE;
}

static gboolean
read_name (RwStockItem *item, const char *text, GError **error)
{
  if (g_utf8_strlen (text, -1) > 80)
    return refuse (error, RW_STOCK_NAME, text, _("give 80 letters at most"));
  g_free (item->name);
  item->name = g_strdup (text);
  g_strdelimit (item->name, "\n\r\t", ' ');
  return TRUE;
}

gboolean
rw_stock_field_read (RwStockItem *item, RwStockField field, const char *text, RwStyle style, GError **error)
{
  g_autofree char *trimmed = NULL;

  if (!g_utf8_validate (text, -1, NULL))
    return refuse (error, field, text, _("give text in UTF-8"));
  trimmed = g_strstrip (g_strdup (text));
  switch (field)
    {
    case RW_STOCK_NAME:
      return read_name (item, trimmed, error);
    case RW_STOCK_KIND:
      return read_kind (item, trimmed, error);
    case RW_STOCK_MATERIAL:
      return read_material (item, trimmed, error);
    case RW_STOCK_LENGTH:
      return read_quantity (field, trimmed, "mm", 1, RW_STOCK_LENGTH_MAX, style, &item->length, error);
    case RW_STOCK_WIDTH:
      return read_quantity (field, trimmed, "mm", 0.1, 3000, style, &item->width, error);
    case RW_STOCK_THICKNESS:
      return read_quantity (field, trimmed, "mm", 0.05, 500, style, &item->thickness, error);
    case RW_STOCK_COUNT:
      return read_count (item, trimmed, error);
    case RW_STOCK_AVOID:
      return read_avoid (item, trimmed, style, error);
    case RW_STOCK_PRICE:
      return read_quantity (field, trimmed, "", 0, 1e6, style, &item->price, error);
    case RW_STOCK_MASS:
      return read_quantity (field, trimmed, "g", 0, 1e6, style, &item->mass_g, error);
    default:
      g_return_val_if_reached (FALSE);
    }
}

gboolean
rw_stock_item_check (const RwStockItem *item, GError **error)
{
  const char *missing = NULL;

  if (!(item->length > 0))
    missing = fields[RW_STOCK_LENGTH].label;
  else if (!(item->width > 0))
    missing = fields[RW_STOCK_WIDTH].label;
  else if (rw_stock_kind_is_thick (item->kind) && !(item->thickness > 0))
    missing = fields[RW_STOCK_THICKNESS].label;
  if (missing != NULL)
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("%s: nothing is given; a %s needs it"), _(missing),
                 _(rw_stock_kind_label (item->kind)));
  else if (item->kind == RW_STOCK_TUBE && 2 * item->thickness >= item->width)
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
                 _("Thickness: the wall of a tube is less than half of its diameter"));
  else
    return TRUE;
  return FALSE;
}

/* ---- writing ---- */

static char *
write_length (double length, RwStyle style, gboolean exact)
{
  if (!(length > 0))
    return g_strdup ("");
  return exact ? rw_number_write (length) : rw_quantity_show (length, "mm", style.units, style.decimal);
}

static char *
write_avoid (const RwStockItem *item, RwStyle style, gboolean exact)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < item->avoid->len; i++)
    {
      const RwStretch *stretch = &g_array_index (item->avoid, RwStretch, i);
      g_autofree char *from = write_length (stretch->from, style, exact);
      g_autofree char *to = write_length (stretch->to, style, exact);

      g_string_append_printf (text, "%s%s..%s", i > 0 ? "; " : "", *from != '\0' ? from : "0", to);
    }
  return g_string_free (text, FALSE);
}

static char *
write_number (double value, RwStyle style, gboolean exact, const char *unit)
{
  if (!(value > 0))
    return g_strdup ("");
  return exact ? rw_number_write (value) : rw_quantity_write (value, unit, style.units, 2, style.decimal);
}

static const char *
material_label (const char *id)
{
  int wood = rw_wood_find (id), metal = rw_metal_find (id);

  return wood >= 0 ? _(rw_woods[wood].label) : metal >= 0 ? _(rw_metals[metal].label) : id;
}

char *
rw_stock_field_write (const RwStockItem *item, RwStockField field, RwStyle style)
{
  RwStyle file = RW_STYLE_FILE;
  gboolean exact = style.units == file.units && style.decimal == file.decimal;

  switch (field)
    {
    case RW_STOCK_NAME:
      return g_strdup (item->name);
    case RW_STOCK_KIND:
      return g_strdup (rw_stock_kind_id (item->kind));
    case RW_STOCK_MATERIAL:
      return g_strdup (item->material);
    case RW_STOCK_LENGTH:
      return write_length (item->length, style, exact);
    case RW_STOCK_WIDTH:
      return write_length (item->width, style, exact);
    case RW_STOCK_THICKNESS:
      return write_length (rw_stock_kind_is_thick (item->kind) ? item->thickness : 0, style, exact);
    case RW_STOCK_COUNT:
      return g_strdup_printf ("%d", item->count);
    case RW_STOCK_AVOID:
      return write_avoid (item, style, exact);
    case RW_STOCK_PRICE:
      return write_number (item->price, style, exact, "");
    case RW_STOCK_MASS:
      return write_number (item->mass_g, style, exact, "g");
    default:
      g_return_val_if_reached (NULL);
    }
}

/* As few decimals as say it. */
static char *
short_length (double length, RwStyle style)
{
  gboolean whole = style.units != RW_UNITS_MM || fabs (length - round (length)) < 0.005;
  gboolean tenths = fabs (length * 10 - round (length * 10)) < 0.05;

  return rw_quantity_write (length, "mm", style.units, whole ? 0 : tenths ? 1 : 2, style.decimal);
}

char *
rw_stock_item_words (const RwStockItem *item, RwStyle style)
{
  g_autofree char *length = short_length (item->length, style), *width = short_length (item->width, style);
  g_autofree char *thickness = short_length (item->thickness, style);
  const char *unit = rw_quantity_unit ("mm", style.units);

  if (!rw_stock_kind_is_thick (item->kind))
    return g_strdup_printf ("%s, ⌀ %s × %s %s", material_label (item->material), width, length, unit);
  if (item->kind == RW_STOCK_TUBE)
    return g_strdup_printf ("%s, ⌀ %s × %s × %s %s", material_label (item->material), width, thickness, length, unit);
  return g_strdup_printf ("%s, %s × %s × %s %s", material_label (item->material), length, width, thickness, unit);
}
