package org.holewise.school.system;

import java.io.IOException;
import org.holewise.school.account.SignedIn;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Copies of all the data: made and fetched here, or by commands where a server has them. */
@Controller
@RequestMapping("/backups")
class BackupsController {

  private static final Logger log = LoggerFactory.getLogger(BackupsController.class);

  private final Backups backups;
  private final DatabaseServer server;

  BackupsController(Backups backups, DatabaseServer server) {
    this.backups = backups;
    this.server = server;
  }

  @GetMapping
  String list(Model model) {
    var commands = server.commands();
    if (commands.isPresent()) {
      model.addAttribute("commands", commands.get());
      return "system/backup-commands";
    }
    model.addAttribute("memory", server.keepsNothing());
    model.addAttribute("folder", backups.folder());
    model.addAttribute("backups", backups.all());
    return "system/backups";
  }

  @PostMapping
  String make(@AuthenticationPrincipal SignedIn me, Model model, RedirectAttributes after) {
    if (server.commands().isPresent()) {
      throw new ResponseStatusException(HttpStatus.NOT_FOUND);
    }
    if (server.keepsNothing()) {
      return "redirect:/backups";
    }
    try {
      after.addFlashAttribute("made", backups.make(me.person()).name());
      return "redirect:/backups";
    } catch (IOException e) {
      log.error("no backup was made", e);
      model.addAttribute("failed", true);
      return list(model);
    }
  }

  @GetMapping("/{name}")
  ResponseEntity<Resource> download(@PathVariable String name) {
    var backup =
        backups.named(name).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    return ResponseEntity.ok()
        .contentType(MediaType.parseMediaType("application/zip"))
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.attachment().filename(backup.name()).build().toString())
        .body(new FileSystemResource(backup.file()));
  }
}
