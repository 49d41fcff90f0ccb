#include "shelf_json.h"

#include <glib/gi18n-lib.h>

#include "project/stock_field.h"

const char *const rw_shelf_json_known[] = {
  "name", "kind", "material", "length", "width", "thickness", "count", "avoid", "price", "mass", NULL,
};

void
rw_shelf_json_begin (GString *out, const RwStockItem *item)
{
  g_string_append (out, "{ ");
  for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
    {
      g_autofree char *text = rw_stock_field_write (item, (RwStockField) field, RW_STYLE_FILE);

      if (*text == '\0')
        continue;
      g_string_append_printf (out, "%s\"%s\": ", field > 0 && !g_str_has_suffix (out->str, "{ ") ? ", " : "",
                              rw_stock_field_id ((RwStockField) field));
      if (field == RW_STOCK_NAME || field == RW_STOCK_KIND || field == RW_STOCK_MATERIAL || field == RW_STOCK_AVOID)
        rw_json_string (out, text);
      else
        g_string_append (out, text);
    }
}

static gboolean
fail_item (GError **error, guint number, const char *reason)
{
  g_autofree char *sentence = rw_file_sentence (reason);

  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_VALUE, _("Item %u of the shelf: %s"), number, sentence);
  return FALSE;
}

/* A number as a file has it is text that the field takes. */
static gboolean
read_field (RwStockItem *item, RwStockField field, JsonNode *node, guint number, GError **error)
{
  g_autoptr (GError) reason = NULL;
  g_autofree char *text = NULL;

  if (rw_member_is_text (node))
    text = g_strdup (json_node_get_string (node));
  else if (rw_member_is_number (node))
    text = rw_number_write (json_node_get_double (node));
  else
    return fail_item (error, number, _("a field is neither a number nor a text"));
  return rw_stock_field_read (item, field, text, RW_STYLE_FILE, &reason) || fail_item (error, number, reason->message);
}

RwStockItem *
rw_shelf_json_read (JsonNode *node, guint number, GError **error)
{
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  g_autoptr (RwStockItem) item = rw_stock_item_new (RW_STOCK_BOARD);
  g_autoptr (GError) reason = NULL;

  if (object == NULL)
    {
      fail_item (error, number, _("it is no object"));
      return NULL;
    }
  for (int field = 0; field < RW_STOCK_FIELD_COUNT; field++)
    {
      JsonNode *member = json_object_get_member (object, rw_stock_field_id ((RwStockField) field));

      if (member != NULL && !read_field (item, (RwStockField) field, member, number, error))
        return NULL;
    }
  if (rw_stock_item_check (item, &reason))
    return g_steal_pointer (&item);
  fail_item (error, number, reason->message);
  return NULL;
}
