"""Papers that people sign: count sheet, gauge record, batch record, lot passport, run sheet. Each is a PDF."""
